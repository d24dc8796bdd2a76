package trimwright.exchange.picture;

import java.util.List;

/**
 * A text that belongs to a place in a picture.
 *
 * @param wordings what to say, the fullest first; a shorter one is taken where that does not fit
 * @param unit follows in muted ink; may be empty
 * @param place what it belongs to
 * @param colour paint of the text
 * @param leader whether a thin line may join text and place
 * @param rather the side on which it is looked for first
 */
record Label(
    List<String> wordings, String unit, Dot place, String colour, boolean leader, Side rather) {

  /** A side of the place. */
  enum Side {
    RIGHT(1, 0),
    BELOW(0, 1),
    LEFT(-1, 0),
    ABOVE(0, -1),
    ANY(0, 0);

    private final double dx;
    private final double dy;

    Side(double dx, double dy) {
      this.dx = dx;
      this.dy = dy;
    }

    /** How far a direction turns away from this side: 0 along it, 2 against it. */
    double against(double x, double y) {
      return this == ANY ? 0 : 1 - (x * dx + y * dy);
    }
  }

  static Label of(String wording, Dot place, String colour) {
    return new Label(List.of(wording), "", place, colour, true, Side.ANY);
  }
}
