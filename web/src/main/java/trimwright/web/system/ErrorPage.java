package trimwright.web.system;

/**
 * What an error page says.
 *
 * @param status HTTP status
 * @param title what happened, in a few words
 * @param advice what to do about it
 * @param reference number under which the log has the cause
 */
public record ErrorPage(int status, String title, String advice, String reference) {
  private static final int BAD_REQUEST = 400;
  private static final int FORBIDDEN = 403;
  private static final int NOT_FOUND = 404;
  private static final int METHOD_NOT_ALLOWED = 405;
  private static final int LENGTH_REQUIRED = 411;
  private static final int TOO_LARGE = 413;
  private static final int UNSUPPORTED_MEDIA_TYPE = 415;
  private static final int UNPROCESSABLE_CONTENT = 422;
  private static final int SERVICE_UNAVAILABLE = 503;

  static ErrorPage of(int status, String reference) {
    return switch (status) {
      case NOT_FOUND ->
          new ErrorPage(
              status,
              "There is no such page here.",
              "Check the address for a typing slip, or go back to the first page and choose a case.",
              reference);
      case BAD_REQUEST, METHOD_NOT_ALLOWED, LENGTH_REQUIRED, UNSUPPORTED_MEDIA_TYPE ->
          new ErrorPage(
              status,
              "The shop could not make sense of that request.",
              "Open the first page by the address that was printed when the shop started.",
              reference);
      case FORBIDDEN ->
          new ErrorPage(
              status,
              "This page is no longer known here.",
              "Load it again and send it once more. Cookies from this address must be allowed.",
              reference);
      case TOO_LARGE ->
          new ErrorPage(
              status,
              "What you handed in is too large.",
              "A case file holds at most 256 kB; an ordinary one holds about 2 kB. Check that you chose the right file.",
              reference);
      case UNPROCESSABLE_CONTENT ->
          new ErrorPage(
              status,
              "What was sent makes no case.",
              "Go back to the Bench, put right the inputs that it marks, and try again.",
              reference);
      case SERVICE_UNAVAILABLE ->
          new ErrorPage(
              status,
              "The shop is busy.",
              "Other curves are being computed. Wait a moment and try again.",
              reference);
      default ->
          new ErrorPage(
              status,
              "Something went wrong inside Trimwright.",
              "It is not your input's fault. Try once more; if it stays, tell whoever looks after the program the"
                  + " reference number below.",
              reference);
    };
  }
}
