package trimwright.web.system;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;

/**
 * What the container answers by itself, to a request too malformed to reach any page: our words on
 * a bare page that tells neither cause nor version.
 */
final class BareAnswer extends ErrorReportValve {
  private static final Logger LOG = Logger.getLogger(BareAnswer.class.getName());
  private static final int FIRST_ERROR = 400;

  @Override
  protected void report(Request request, Response response, Throwable throwable) {
    int status = response.getStatus();
    if (status < FIRST_ERROR || response.getContentWritten() > 0 || !response.setErrorReported()) {
      return;
    }
    try {
      response.setContentType("text/html");
      response.setCharacterEncoding(StandardCharsets.UTF_8.name());
      response.setHeader("Content-Security-Policy", "default-src 'none'");
      Writer writer = response.getReporter();
      if (writer != null) {
        writer.write(page(ErrorPage.of(status, "")));
        response.finishResponse();
      }
    } catch (IOException | IllegalStateException e) {
      // Whoever asked is gone; there is nobody left to tell.
      LOG.log(Level.FINE, "a bare answer was not read", e);
    }
  }

  /** No text of the request stands in it, so that nothing needs escaping. */
  private static String page(ErrorPage error) {
    return "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>"
        + error.title()
        + "</title></head><body><h1>"
        + error.title()
        + "</h1><p>"
        + error.advice()
        + "</p><p><a href=\"/\">To the first page</a></p></body></html>\n";
  }
}
