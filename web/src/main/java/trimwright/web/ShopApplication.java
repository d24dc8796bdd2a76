package trimwright.web;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.servlet.ServletWebServerFactory;
import org.springframework.boot.web.server.servlet.context.AnnotationConfigServletWebServerApplicationContext;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ApplicationContextException;
import trimwright.desk.CaseShelf;
import trimwright.web.bench.BenchConfiguration;
import trimwright.web.system.LocalServer;
import trimwright.web.system.ServerLog;

/** Starts the shop in the browser. It listens on the loopback address only. */
public final class ShopApplication {
  /** Ports tried after the preferred one before giving up. */
  private static final int PORTS_TRIED = 50;

  private static final int HIGHEST_PORT = 65_535;

  private ShopApplication() {}

  /**
   * Starts the shop on the preferred port, or on the next free one above it. Whoever starts it says
   * where it is.
   *
   * @param preferredPort port to try first; 0 takes any free one
   * @param folder where the shop keeps its files; made when something is first saved
   * @return the running shop
   * @throws IllegalArgumentException if the port is below 0 or above 65535
   * @throws IllegalStateException if none of the ports tried is free
   */
  public static RunningShop start(int preferredPort, Path folder) {
    if (preferredPort < 0 || preferredPort > HIGHEST_PORT) {
      throw new IllegalArgumentException(
          "port must be from 0 to " + HIGHEST_PORT + ", was " + preferredPort);
    }
    ServerLog.open();
    CompletableFuture<URI> address = new CompletableFuture<>();
    Thread warmUp = new Thread(() -> BenchConfiguration.warmUp(folder, address), "warm-up");
    warmUp.setDaemon(true);
    warmUp.start();
    try {
      RunningShop shop = open(preferredPort, folder);
      address.complete(shop.address());
      return shop;
    } finally {
      address.cancel(false); // Without a shop there is nothing to wait for.
    }
  }

  private static RunningShop open(int preferredPort, Path folder) {
    int last = preferredPort == 0 ? 0 : Math.min(HIGHEST_PORT, preferredPort + PORTS_TRIED);
    for (int port = preferredPort; port <= last; port++) {
      if (port != 0 && !isFree(port)) {
        continue;
      }
      try {
        return new RunningShop(run(port, folder));
      } catch (ApplicationContextException failed) {
        if (!(failed.getCause() instanceof PortInUseException)) {
          throw failed;
        }
        // Somebody was quicker between the look and the start: the next port, if there is one.
        if (port == last) {
          throw new IllegalStateException(noneFree(preferredPort, last), failed);
        }
      }
    }
    throw new IllegalStateException(noneFree(preferredPort, last));
  }

  private static String noneFree(int from, int to) {
    return "no free port from " + from + " to " + to + " on " + LocalServer.ADDRESS;
  }

  /** A look before the start, because a start that fails costs half a second. */
  private static boolean isFree(int port) {
    try (ServerSocket socket = new ServerSocket(port, 1, LocalServer.address())) {
      return socket.isBound();
    } catch (IOException taken) {
      return false;
    }
  }

  private static ServletWebServerApplicationContext run(int port, Path folder) {
    AnnotationConfigServletWebServerApplicationContext context =
        new AnnotationConfigServletWebServerApplicationContext();
    context.registerBean(ServletWebServerFactory.class, () -> LocalServer.at(port));
    context.registerBean(CaseShelf.class, () -> new CaseShelf(folder));
    context.register(ShopConfiguration.class);
    context.registerShutdownHook();
    context.refresh();
    return context;
  }
}
