package trimwright.command;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Starts the shop in the browser. The web face implements it and the program's main class hands it
 * in, so that the command line knows of no web framework.
 */
public interface ShopServer {

  /**
   * Starts the shop on the loopback interface and returns once it answers.
   *
   * @param start what to start
   * @return the running shop
   * @throws IOException if no port near the wished one is free or the shop cannot start
   */
  RunningShop start(Start start) throws IOException;

  /**
   * What to start.
   *
   * @param preferredPort the port to try first, 1 to 65535; when it is taken, the next free one is
   *     used
   * @param folder where the shop may keep files
   * @param madeUp whether it is the made-up shop with the demo cases
   */
  record Start(int preferredPort, Path folder, boolean madeUp) {}

  /** A shop that answers. */
  interface RunningShop {

    /** Where it answers, such as {@code http://127.0.0.1:8080/}. */
    String address();

    /**
     * Waits until the shop has been stopped.
     *
     * @throws InterruptedException if the waiting thread is interrupted
     */
    void awaitStop() throws InterruptedException;
  }
}
