package trimwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Opens the shop on a throw-away folder and waits until it is stopped. */
final class Shop {
  private Shop() {}

  /**
   * Opens the shop, prints its address and waits.
   *
   * @param madeUp whether it is the made-up shop
   * @return the exit status
   * @throws IOException if the shop cannot start
   */
  static int open(Console console, int port, boolean madeUp) throws IOException {
    Path folder = Files.createTempDirectory("trimwright-shop-");
    // Ctrl-C ends the process without coming back here, so that a hook clears the folder too; when
    // the
    // shop ended by itself, the hook finds nothing left to do.
    Runtime.getRuntime().addShutdownHook(new Thread(() -> clear(folder), "clear-shop-folder"));
    try {
      ShopServer.RunningShop shop =
          console.shop().start(new ShopServer.Start(port, folder, madeUp));
      console.print(
          (madeUp ? "The made-up shop is open: " : "The shop is open: ") + shop.address());
      console.print("Stop it with Ctrl-C.");
      console.out().flush();
      shop.awaitStop();
      return CommandLineEntry.GOOD;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return CommandLineEntry.FAULT;
    } finally {
      clear(folder);
    }
  }

  private static void clear(Path folder) {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the folder " + folder + " could not be cleared", e);
    }
  }
}
