package trimwright.web.page;

/**
 * The token by which the server knows a form or a script of its own.
 *
 * @param field name of a form's hidden field, empty where the page came about outside the security
 *     filters
 * @param header name of the header in which a script sends it
 * @param value its value
 */
public record Csrf(String field, String header, String value) {
  /** No token: a page without forms that change anything. */
  public static final Csrf NONE = new Csrf("", "", "");
}
