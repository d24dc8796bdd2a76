package trimwright.web.page;

import java.util.Arrays;
import java.util.Optional;

/** The grounds on which a page can be shown. */
public enum Theme {
  /** Dark ink on a light ground. */
  LIGHT("light", "Light"),
  /** Light ink on a dark ground. */
  DARK("dark", "Dark"),
  /** The strongest contrast, thicker lines and larger targets, for a beach. */
  SUN("sun", "Sun");

  private final String code;
  private final String label;

  Theme(String code, String label) {
    this.code = code;
    this.label = label;
  }

  /**
   * The name used in addresses and in the style sheet.
   *
   * @return lower case word
   */
  public String code() {
    return code;
  }

  /**
   * The name a person reads.
   *
   * @return a word
   */
  public String label() {
    return label;
  }

  /**
   * The theme with this code.
   *
   * @param code from an address, may be null
   * @return the theme, where there is one of that name
   */
  public static Optional<Theme> find(String code) {
    return Arrays.stream(values()).filter(theme -> theme.code.equals(code)).findFirst();
  }

  /**
   * The theme asked for, or the light one.
   *
   * @param code from an address, may be null
   * @return a theme
   */
  public static Theme orLight(String code) {
    return find(code).orElse(LIGHT);
  }
}
