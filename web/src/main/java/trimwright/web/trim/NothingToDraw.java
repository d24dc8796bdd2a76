package trimwright.web.trim;

import org.springframework.http.HttpStatus;
import org.springframework.web.ErrorResponseException;

/** A picture was asked for at a speed at which nothing balances. */
final class NothingToDraw extends ErrorResponseException {
  private static final long serialVersionUID = 1L;

  NothingToDraw() {
    super(HttpStatus.NOT_FOUND);
  }
}
