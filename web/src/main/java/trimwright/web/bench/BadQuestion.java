package trimwright.web.bench;

import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;

/** What was sent is not what the page sends. */
public final class BadQuestion extends ErrorResponseException {
  private static final long serialVersionUID = 1L;

  /** Makes one. */
  public BadQuestion() {
    super(HttpStatus.BAD_REQUEST);
  }
}
