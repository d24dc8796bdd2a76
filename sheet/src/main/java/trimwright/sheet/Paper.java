package trimwright.sheet;

/** A size of paper, upright. */
public enum Paper {
  /** 210 by 297 mm (ISO 216). */
  A4("A4", 210, 297),
  /** 8.5 by 11 inches (ANSI/ASME Y14.1, size A). */
  LETTER("letter", 215.9, 279.4);

  private final String cssName;
  private final double width;
  private final double height;

  Paper(String cssName, double width, double height) {
    this.cssName = cssName;
    this.width = width;
    this.height = height;
  }

  /** The name that a style sheet knows it by. */
  String cssName() {
    return cssName;
  }

  /** Width [mm]. */
  public double width() {
    return width;
  }

  /** Height [mm]. */
  public double height() {
    return height;
  }
}
