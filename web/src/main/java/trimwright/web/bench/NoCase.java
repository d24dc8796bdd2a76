package trimwright.web.bench;

import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;

/** What was sent with a form makes no case. */
final class NoCase extends ErrorResponseException {
  private static final long serialVersionUID = 1L;

  NoCase() {
    super(HttpStatus.UNPROCESSABLE_CONTENT);
  }
}
