package trimwright.web.system;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Turns away a request that says of itself that it is far too large, before anything reads it, and
 * one that does not say how large it is: browsers always do.
 */
final class SizeLimit extends OncePerRequestFilter {
  /**
   * Below the container's own 2 MB [byte]: above those it drops the form's fields without a word.
   */
  static final long LARGEST_REQUEST = 1_000_000;

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (request.getContentLengthLong() > LARGEST_REQUEST) {
      response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
      return;
    }
    if (request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null) {
      response.sendError(HttpServletResponse.SC_LENGTH_REQUIRED);
      return;
    }
    chain.doFilter(request, response);
  }
}
