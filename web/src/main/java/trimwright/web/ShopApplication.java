package trimwright.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.core.env.MapPropertySource;
import trimwright.desk.CaseShelf;
import trimwright.web.bench.BenchConfiguration;

/** Starts the shop in the browser. It listens on the loopback address only. */
public final class ShopApplication {
  /** The only address listened on. */
  static final String LOOPBACK = "127.0.0.1";

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
    Thread warmUp = new Thread(() -> BenchConfiguration.warmUp(folder), "warm-up");
    warmUp.setDaemon(true);
    warmUp.start();
    int last = preferredPort == 0 ? 0 : Math.min(HIGHEST_PORT, preferredPort + PORTS_TRIED);
    for (int port = preferredPort; port <= last; port++) {
      if (port != 0 && !isFree(port)) {
        continue;
      }
      try {
        return new RunningShop(run(port, folder));
      } catch (PortInUseException taken) {
        // Somebody was quicker between the look and the start: the next port, if there is one.
        if (port == last) {
          throw new IllegalStateException(noneFree(preferredPort, last), taken);
        }
      }
    }
    throw new IllegalStateException(noneFree(preferredPort, last));
  }

  private static String noneFree(int from, int to) {
    return "no free port from " + from + " to " + to + " on " + LOOPBACK;
  }

  /** A look before the start, because a start that fails costs a second and logs an error. */
  private static boolean isFree(int port) {
    try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getByName(LOOPBACK))) {
      return socket.isBound();
    } catch (IOException taken) {
      return false;
    }
  }

  private static ConfigurableApplicationContext run(int port, Path folder) {
    SpringApplication application = new SpringApplication(ShopConfiguration.class);
    application.setWebApplicationType(WebApplicationType.SERVLET);
    application.setBannerMode(Banner.Mode.OFF);
    application.setLogStartupInfo(false);
    application.setLazyInitialization(true);
    Map<String, Object> settings = new LinkedHashMap<>();
    settings.put("server.port", port);
    settings.put("server.address", LOOPBACK);
    // On the command line's rank, so that no variable of the environment can open the server to a
    // network.
    application.addInitializers(
        context ->
            context
                .getEnvironment()
                .getPropertySources()
                .addFirst(new MapPropertySource("address", settings)));
    application.addInitializers(
        context ->
            ((GenericApplicationContext) context)
                .registerBean(CaseShelf.class, () -> new CaseShelf(folder)));
    return application.run();
  }
}
