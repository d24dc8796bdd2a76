package trimwright.web.trim;

import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;

/** An address names a demo case that does not exist. */
final class UnknownDemoCase extends ErrorResponseException {
  private static final long serialVersionUID = 1L;

  UnknownDemoCase(String id) {
    super(HttpStatus.NOT_FOUND);
    setDetail("no demo case " + id);
  }
}
