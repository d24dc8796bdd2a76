package trimwright.web.bench;

import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;

/** An address names a case that is not on the shelf. */
final class UnknownCase extends ErrorResponseException {
  private static final long serialVersionUID = 1L;

  UnknownCase() {
    super(HttpStatus.NOT_FOUND);
  }
}
