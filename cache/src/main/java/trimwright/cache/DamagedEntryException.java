package trimwright.cache;

/** Bytes that are not what was once written, or not of the form that is read now. */
public final class DamagedEntryException extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Bytes that cannot be trusted.
   *
   * @param message what is wrong with them
   */
  public DamagedEntryException(String message) {
    super(message);
  }
}
