package trimwright.exchange.words;

import java.math.BigDecimal;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimPoint;

/** What to do about the set's part of the pitch: a wedge where one is fit for it. */
final class WedgeWords {
  /** The most that a wedge under the mast's base is offered for [degrees]. Chosen. */
  private static final BigDecimal MOST = new BigDecimal("5");

  /** Either end of {@code base_angle_deg} in a case file [degrees]. */
  private static final double BASE_END = 10;

  private final BigDecimal setPart;

  /** What would be fitted: the trade's nearest step to the part [degrees]. */
  private final BigDecimal wedge;

  private final double baseAfter;
  private final boolean nearStall;
  private final boolean felt;

  /**
   * The words for a part.
   *
   * @param baseAngle of the mast as it stands [rad]
   * @param wished what it does at the wished speed
   * @param setPart the set's part of the pitch as shown, nose up positive [degrees]
   * @param felt whether a rider feels that part
   */
  WedgeWords(double baseAngle, TrimPoint wished, BigDecimal setPart, boolean felt) {
    this.felt = felt;
    this.setPart = setPart;
    wedge = Amounts.angle(setPart);
    baseAfter = Shown.degrees(baseAngle) - setPart.signum() * wedge.doubleValue();
    nearStall = wished.brokenLimits().contains(Limit.STALL_MARGIN);
  }

  /** What to fit, without a capital or a full stop. */
  String order() {
    return fits() ? wedge() + ", or " + otherWing() : otherWing();
  }

  /** The first of these. */
  String first() {
    return fits() ? wedge() : otherWing();
  }

  /** The explanation: what a wedge does, or why none is offered. */
  String sentence() {
    if (!felt) {
      return "The set's " + size() + " is small: few riders feel it.";
    }
    if (nearStall) {
      return "No wedge for that: it would turn the deck and leave the wing as near its stall.";
    }
    if (fits()) {
      return "For the set's part put "
          + wedge()
          + ": it turns the deck and leaves the load on your feet as it is. Or take "
          + otherWing()
          + ".";
    }
    return "No wedge for that: "
        + (setPart.abs().compareTo(MOST) > 0
            ? size() + " is more than the " + MOST + "° that a wedge is good for"
            : "the mast's base would stand at "
                + Shown.decimals(baseAfter, 1)
                + "°, and 10° either way is the end")
        + ". Take "
        + otherWing()
        + ".";
  }

  private boolean fits() {
    return !nearStall && setPart.abs().compareTo(MOST) <= 0 && Math.abs(baseAfter) <= BASE_END;
  }

  private String wedge() {
    // A thick back end lifts the board's tail off the mast: nose down.
    return "a "
        + Amounts.plain(wedge)
        + "° wedge under the mast's base, thick end to the "
        + (setPart.signum() > 0 ? "back" : "front");
  }

  private String otherWing() {
    return setPart.signum() > 0 ? "a larger front wing" : "a smaller front wing";
  }

  private String size() {
    return setPart.abs().toPlainString() + "° " + Shown.noseWord(setPart.doubleValue());
  }
}
