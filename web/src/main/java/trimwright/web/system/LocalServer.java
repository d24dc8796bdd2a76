package trimwright.web.system;

import java.net.InetAddress;
import java.net.UnknownHostException;
import org.apache.catalina.Context;
import org.apache.catalina.connector.Connector;
import org.apache.catalina.core.StandardHost;
import org.apache.coyote.http11.AbstractHttp11Protocol;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.error.ErrorPage;
import org.springframework.boot.web.server.servlet.ServletWebServerFactory;

/**
 * The servlet container. It listens on the loopback address, and nothing outside this class decides
 * where: no property and no variable of the environment can open it to a network.
 */
public final class LocalServer {
  /** The only address listened on. */
  public static final String ADDRESS = "127.0.0.1";

  /**
   * Largest form that is read [byte]. A case file may hold 256 kB and a page says so in words; this
   * lies above that, so that a file somewhat too large still reaches the page that explains it.
   */
  private static final int LARGEST_FORM = 2_000_000;

  /**
   * How much is read on past a request that was refused for its size [byte]; without it the browser
   * shows a broken connection instead of the reason.
   */
  private static final int LARGEST_READ_PAST = 64_000_000;

  private LocalServer() {}

  /**
   * A container for one start.
   *
   * @param port port to listen on, 0 for any free one
   * @return what the application context starts it from
   */
  public static ServletWebServerFactory at(int port) {
    TomcatServletWebServerFactory server = new TomcatServletWebServerFactory(port);
    server.setAddress(address());
    server.addConnectorCustomizers(LocalServer::limitSizes);
    server.addContextCustomizers(LocalServer::keepQuiet);
    server.addErrorPages(new ErrorPage(ErrorPages.ADDRESS));
    return server;
  }

  /**
   * The address listened on.
   *
   * @return the loopback address
   */
  public static InetAddress address() {
    try {
      return InetAddress.getByName(ADDRESS);
    } catch (UnknownHostException e) {
      throw new IllegalStateException("an address in digits needs no looking up", e);
    }
  }

  private static void limitSizes(Connector connector) {
    connector.setMaxPostSize(LARGEST_FORM);
    if (connector.getProtocolHandler() instanceof AbstractHttp11Protocol<?> protocol) {
      protocol.setMaxSwallowSize(LARGEST_READ_PAST);
    }
  }

  /** In place of the container's own page, which it would put in by the name of its class. */
  private static void keepQuiet(Context context) {
    StandardHost host = (StandardHost) context.getParent();
    host.setErrorReportValveClass(BareAnswer.class.getName());
    host.getPipeline().addValve(new BareAnswer());
  }
}
