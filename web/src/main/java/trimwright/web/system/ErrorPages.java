package trimwright.web.system;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.stereotype.Controller;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;
import org.springframework.web.servlet.ModelAndView;
import trimwright.exchange.write.ShelfWriter;
import trimwright.web.page.Theme;

/**
 * Pages for what went wrong, and the same in JSON for a script that asked. A person gets words and
 * a reference number; the cause itself goes to the log under the same number and never into a page.
 */
@Controller
@ControllerAdvice
class ErrorPages {
  /** Where the container turns for a page when it has no answer of its own. */
  static final String ADDRESS = "/error";

  private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);

  /** Addresses that the page's scripts ask. */
  private static final List<String> SCRIPTS = List.of("/bench/", "/match/");

  private static final int REFERENCE_BITS = 32;
  private static final int FIRST_SERVER_ERROR = 500;
  private final SecureRandom random = new SecureRandom();

  /**
   * What reaches the container without an answer: refused tokens, refused hosts, sizes, errors in
   * filters.
   */
  @RequestMapping(ADDRESS)
  Object container(HttpServletRequest request) {
    Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
    int status = code instanceof Integer number ? number : HttpStatus.NOT_FOUND.value();
    Throwable cause = (Throwable) request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
    return page(request, status, cause);
  }

  /** What a page's own code threw. */
  @ExceptionHandler(Exception.class)
  Object thrown(Exception exception, HttpServletRequest request) {
    return page(request, statusOf(exception), exception);
  }

  /** Whoever asked has gone, as a browser does that leaves the page: nobody is there to be told. */
  @ExceptionHandler(AsyncRequestNotUsableException.class)
  void gone(AsyncRequestNotUsableException exception, HttpServletResponse response) {
    LOG.debug("an answer found nobody, was {}", response.getStatus(), exception);
  }

  private static int statusOf(Exception exception) {
    if (exception instanceof HttpMessageNotReadableException) {
      return HttpStatus.BAD_REQUEST.value();
    }
    return exception instanceof ErrorResponse response
        ? response.getStatusCode().value()
        : HttpStatus.INTERNAL_SERVER_ERROR.value();
  }

  private Object page(HttpServletRequest request, int status, Throwable cause) {
    String reference = String.format("%08X", random.nextLong() >>> REFERENCE_BITS);
    if (status >= FIRST_SERVER_ERROR) {
      LOG.error("reference {}: {} answered {}", reference, request.getMethod(), status, cause);
    }
    HttpStatus resolved = HttpStatus.resolve(status);
    HttpStatus known = resolved == null ? HttpStatus.INTERNAL_SERVER_ERROR : resolved;
    ErrorPage error = ErrorPage.of(status, reference);
    if (isScript(request)) {
      return json(known, error);
    }
    ModelAndView page =
        new ModelAndView(
            "system/error",
            Map.of("error", error, "theme", Theme.orLight(request.getParameter("theme"))));
    page.setStatus(known);
    return page;
  }

  /** Whether a script of the page asked, and not a person by an address or a form. */
  private static boolean isScript(HttpServletRequest request) {
    Object first = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
    String address = first instanceof String text ? text : request.getRequestURI();
    String accepted = request.getHeader(HttpHeaders.ACCEPT);
    return SCRIPTS.stream().anyMatch(address::startsWith)
        && (accepted == null || !accepted.contains(MediaType.TEXT_HTML_VALUE));
  }

  private static ResponseEntity<byte[]> json(HttpStatus status, ErrorPage error) {
    String words = error.title() + " " + error.advice();
    return ResponseEntity.status(status)
        .contentType(MediaType.APPLICATION_JSON)
        .body(ShelfWriter.fault(words, error.reference()).getBytes(StandardCharsets.UTF_8));
  }
}
