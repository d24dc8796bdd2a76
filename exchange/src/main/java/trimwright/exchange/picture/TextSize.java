package trimwright.exchange.picture;

/** How wide a text is at most, in whichever plain sans face it is drawn. */
final class TextSize {
  /** Height of a line over the size of its letters. */
  static final double LINE = 1.2;

  /** From the top of a line's box to its base line, over the size of its letters. */
  static final double BASE = 0.95;

  private TextSize() {}

  /**
   * An upper estimate, from the widths of a wide sans face (from memory, rounded up).
   *
   * @param text one line
   * @param size of the letters [px]
   * @return width [px]
   */
  static double width(String text, double size) {
    double ems = 0;
    for (int i = 0; i < text.length(); i++) {
      ems += ems(text.charAt(i));
    }
    return ems * size;
  }

  private static double ems(char c) {
    if ("iljI.,:;'|".indexOf(c) >= 0) {
      return 0.34;
    }
    if (" ftr()-/°".indexOf(c) >= 0) {
      return c == '°' ? 0.5 : 0.42;
    }
    if ("mwMW%".indexOf(c) >= 0) {
      return 0.98;
    }
    return Character.isUpperCase(c) ? 0.74 : 0.64;
  }
}
