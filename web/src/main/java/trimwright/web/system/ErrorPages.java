package trimwright.web.system;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.security.SecureRandom;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;
import trimwright.web.page.Theme;

/**
 * Pages for what went wrong. A person gets words and a reference number; the cause itself goes to
 * the log under the same number and never into a page.
 */
@Controller
@ControllerAdvice
class ErrorPages implements ErrorController {
  private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
  private static final int REFERENCE_BITS = 32;
  private static final int FIRST_SERVER_ERROR = 500;
  private final SecureRandom random = new SecureRandom();

  /**
   * What reaches the container without an answer: refused tokens, refused hosts, sizes, errors in
   * filters.
   */
  @RequestMapping("/error")
  ModelAndView container(HttpServletRequest request) {
    Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
    int status = code instanceof Integer number ? number : HttpStatus.NOT_FOUND.value();
    Throwable cause = (Throwable) request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
    return page(request, status, cause);
  }

  /** What a page's own code threw. */
  @ExceptionHandler(Exception.class)
  ModelAndView thrown(Exception exception, HttpServletRequest request) {
    int status =
        exception instanceof ErrorResponse response
            ? response.getStatusCode().value()
            : HttpStatus.INTERNAL_SERVER_ERROR.value();
    return page(request, status, exception);
  }

  private ModelAndView page(HttpServletRequest request, int status, Throwable cause) {
    String reference = String.format("%08X", random.nextLong() >>> REFERENCE_BITS);
    if (status >= FIRST_SERVER_ERROR) {
      LOG.error("reference {}: {} answered {}", reference, request.getMethod(), status, cause);
    }
    HttpStatus known = HttpStatus.resolve(status);
    ModelAndView page =
        new ModelAndView(
            "system/error",
            Map.of(
                "error",
                ErrorPage.of(status, reference),
                "theme",
                Theme.orLight(request.getParameter("theme"))));
    page.setStatus(known == null ? HttpStatus.INTERNAL_SERVER_ERROR : known);
    return page;
  }
}
