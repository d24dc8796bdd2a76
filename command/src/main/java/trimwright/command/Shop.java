package trimwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Opens the shop on a folder and waits until it is stopped. */
final class Shop {
  /** Name of the folder in the user's home that keeps the shop's files unless another is named. */
  private static final String HOME_FOLDER = "trimwright";

  private Shop() {}

  /**
   * Opens the shop on a folder that stays. It need not exist: what is first saved makes it.
   *
   * @param folder name of the folder; null for the one in the user's home
   * @param madeUp whether it is the made-up shop
   * @return the exit status
   * @throws IOException if the shop cannot start
   * @throws BadInput if something other than a folder has that name
   */
  static int open(Console console, int port, String folder, boolean madeUp) throws IOException {
    Path kept =
        folder == null
            ? Path.of(System.getProperty("user.home"), HOME_FOLDER)
            : named(folder).toAbsolutePath().normalize();
    return run(console, port, kept, madeUp, "It keeps its files in " + kept + ".");
  }

  /**
   * Opens the made-up shop on a folder that goes when the shop is stopped.
   *
   * @return the exit status
   * @throws IOException if the shop cannot start
   */
  static int openThrowAway(Console console, int port) throws IOException {
    Path folder = Files.createTempDirectory("trimwright-shop-");
    // Ctrl-C ends the process without coming back here, so that a hook clears the folder too; when
    // the shop ended by itself, the hook finds nothing left to do. Both may come at once.
    Runtime.getRuntime().addShutdownHook(new Thread(() -> clear(folder), "clear-shop-folder"));
    try {
      return run(console, port, folder, true, "What you save here goes when it is stopped.");
    } finally {
      clear(folder);
    }
  }

  private static Path named(String folder) {
    try {
      Path path = Path.of(folder);
      if (Files.exists(path) && !Files.isDirectory(path)) {
        throw new BadInput("--folder must name a folder, and " + folder + " is a file.");
      }
      return path;
    } catch (InvalidPathException e) {
      throw new BadInput("--folder must name a folder; no file system takes that name.");
    }
  }

  private static int run(Console console, int port, Path folder, boolean madeUp, String aboutFolder)
      throws IOException {
    try {
      ShopServer.RunningShop shop =
          console.shop().start(new ShopServer.Start(port, folder, madeUp));
      console.print(
          (madeUp ? "The made-up shop is open: " : "The shop is open: ") + shop.address());
      console.print(aboutFolder);
      console.print("Stop it with Ctrl-C.");
      console.out().flush();
      shop.awaitStop();
      return CommandLineEntry.GOOD;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return CommandLineEntry.FAULT;
    }
  }

  private static synchronized void clear(Path folder) {
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
