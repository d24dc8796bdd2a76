package trimwright.web.page;

/**
 * The hidden field by which the server knows a form of its own.
 *
 * @param field name of the field, empty where the page came about outside the security filters
 * @param value its value
 */
public record Csrf(String field, String value) {
  /** No token: a page without forms that change anything. */
  public static final Csrf NONE = new Csrf("", "");
}
