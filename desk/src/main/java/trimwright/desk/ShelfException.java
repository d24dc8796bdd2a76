package trimwright.desk;

/** The shelf's folder cannot be read or written. The message says what was tried and where. */
public final class ShelfException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ShelfException(String message, Throwable cause) {
    super(message, cause);
  }
}
