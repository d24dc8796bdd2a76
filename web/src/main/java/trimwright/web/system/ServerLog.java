package trimwright.web.system;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.LogManager;
import org.slf4j.LoggerFactory;

/** The log of a running shop: the JDK's own, with what the file beside the pages says of it. */
public final class ServerLog {
  private static final String SETTINGS = "/server-log.properties";

  private ServerLog() {}

  /**
   * Sets the log up. Called before anything else, as long as there is one thread only: lines logged
   * by two threads while the log is still being looked for would be answered with a warning.
   */
  public static void open() {
    try (InputStream settings = ServerLog.class.getResourceAsStream(SETTINGS)) {
      LogManager.getLogManager().readConfiguration(settings);
    } catch (IOException e) {
      throw new UncheckedIOException("the log's settings cannot be read", e);
    }
    LoggerFactory.getILoggerFactory();
  }
}
