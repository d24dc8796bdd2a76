package trimwright.web.bench;

import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;

/** Other curves are being computed, and none of them ended in time. */
final class TooBusy extends ErrorResponseException {
  private static final long serialVersionUID = 1L;

  TooBusy() {
    super(HttpStatus.SERVICE_UNAVAILABLE);
  }
}
