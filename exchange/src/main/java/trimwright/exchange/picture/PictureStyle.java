package trimwright.exchange.picture;

/**
 * How a picture is drawn.
 *
 * @param palette colours
 * @param width of the picture [px]
 * @param height of the picture [px]
 * @param line width of the lines that carry the message, as SVG takes it
 * @param fontSize of all text [px]
 * @param fontFamily the face, or empty to take the page's own
 */
public record PictureStyle(
    Palette palette, double width, double height, String line, double fontSize, String fontFamily) {
  /** Below this width a picture stands on a phone, where no text is smaller than 16 px. */
  private static final double PHONE_WIDTH = 600;

  private static final double SMALL = 14;
  private static final double NORMAL = 16;
  private static final String LINE = "2.5";
  private static final String SUN_LINE = "3.5";
  private static final String FACES = "Liberation Sans, Arial, DejaVu Sans, sans-serif";

  /**
   * Checks the size.
   *
   * @throws IllegalArgumentException if a side is below 40 px or above 10 000 px
   */
  public PictureStyle {
    if (!(width >= 40 && width <= 10_000 && height >= 40 && height <= 10_000)) {
      throw new IllegalArgumentException(
          "a picture's sides must be within 40 to 10000 px, were " + width + " and " + height);
    }
  }

  /** Light colours, for screen and paper. */
  public static PictureStyle light(double width, double height) {
    return new PictureStyle(Palette.LIGHT, width, height, LINE, size(width), FACES);
  }

  /** Dark colours. */
  public static PictureStyle dark(double width, double height) {
    return new PictureStyle(Palette.DARK, width, height, LINE, size(width), FACES);
  }

  /** Colours and lines for sunlight. */
  public static PictureStyle sun(double width, double height) {
    return new PictureStyle(Palette.SUN, width, height, SUN_LINE, NORMAL, FACES);
  }

  /**
   * For a page that sets the properties of {@link Palette#VARIABLES} and {@code --line}, the width
   * of a line. The text has the size that suits every theme.
   */
  public static PictureStyle page(double width, double height) {
    return new PictureStyle(Palette.VARIABLES, width, height, "var(--line)", NORMAL, "");
  }

  private static double size(double width) {
    return width < PHONE_WIDTH ? NORMAL : SMALL;
  }
}
