package trimwright.web;

import java.net.URI;
import java.util.concurrent.CountDownLatch;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationListener;
import org.springframework.context.event.ContextClosedEvent;
import trimwright.web.system.LocalServer;

/** A shop that has been started. */
public final class RunningShop implements AutoCloseable {
  private final ServletWebServerApplicationContext context;
  private final URI address;
  private final CountDownLatch closed = new CountDownLatch(1);

  RunningShop(ServletWebServerApplicationContext context) {
    this.context = context;
    int port = context.getWebServer().getPort();
    this.address = URI.create("http://" + LocalServer.ADDRESS + ":" + port + "/");
    context.addApplicationListener(
        (ApplicationListener<ContextClosedEvent>) event -> closed.countDown());
  }

  /**
   * Where the first page is.
   *
   * @return an address that ends in a slash
   */
  public URI address() {
    return address;
  }

  /**
   * Waits until the shop is closed, by {@link #close()} or because the program is being ended.
   *
   * @throws InterruptedException if the waiting thread is interrupted
   */
  public void awaitClose() throws InterruptedException {
    closed.await();
  }

  @Override
  public void close() {
    context.close();
  }
}
