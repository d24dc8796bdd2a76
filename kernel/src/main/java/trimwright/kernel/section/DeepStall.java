package trimwright.kernel.section;

/**
 * A section past its largest lift. Angles count from the line of no lift, so that one rule serves
 * cambered sections on both sides; the most negative lift is the same upside down.
 *
 * <p>Lift is that of L. A. Viterna and R. D. Corrigan (NASA TM-82944, 1982), A1 sin 2b + A2 cos² b
 * / sin b, with the angle b from no lift in place of the chord's; A2 makes it begin at the largest
 * lift. Eased there, so that it leaves the top level. Once the flow has left the upper side the
 * force stands across the plate and drag is lift times tan b (the flat plate's relation that J. L.
 * Tangler and J. D. Kocurek hold stalled blades to, NREL/CP-500-36900, 2005); the centre of
 * pressure of the separated plate lies at 0.5 - 0.175 (1 - 2 b / pi) of the chord (C. Lindenburg,
 * ECN-RX-01-004, 2001). All three from memory. Measured stalls differ from section to section by
 * far more than these rules do: an order of size, ±25 % of lift, not a prediction.
 *
 * <p>Immutable.
 */
final class DeepStall {
  /**
   * Normal force of the plate across the stream [1]: 1.11 + 0.018 times the aspect ratio (Viterna
   * and Corrigan, from memory), at 10. An endless plate has 2.
   */
  private static final double ACROSS = 1.29;

  /** Angle over which the fall of lift begins [rad]. Chosen: as round a top as the side before. */
  private static final double EASING = Math.toRadians(3);

  /** Angle over which drag and moment turn into those of the plate [rad]. Chosen. */
  private static final double TURNING = Math.toRadians(4);

  /** All stays as it is here beyond this angle [rad]. */
  private static final double FURTHEST = Math.toRadians(80);

  private final double stallAngle;
  private final double dragAtStall;

  /** A2, and the slope at the stall that the easing takes away. */
  private final double falling;

  private final double firstSlope;

  /**
   * A stall.
   *
   * @param maximumLift where it begins [1], above 0
   * @param stallAngle from no lift, where it begins [rad], above 0
   * @param dragAtStall drag coefficient there [1]
   */
  DeepStall(double maximumLift, double stallAngle, double dragAtStall) {
    this.stallAngle = stallAngle;
    this.dragAtStall = dragAtStall;
    double sin = Math.sin(stallAngle);
    double cos = Math.cos(stallAngle);
    falling = (maximumLift - ACROSS * sin * cos) * sin / (cos * cos);
    firstSlope = slopeOf(sin, cos);
  }

  /** Lift coefficient [1] at an angle from no lift [rad] past the stall. */
  double lift(double angle) {
    double b = Math.min(angle, FURTHEST);
    double past = b - stallAngle;
    double sin = Math.sin(b);
    double cos = Math.cos(b);
    return ACROSS * sin * cos
        + falling * cos * cos / sin
        - firstSlope * past * Math.exp(-past / EASING);
  }

  /** Its slope [1/rad]. */
  double slope(double angle) {
    if (angle >= FURTHEST) {
      return 0;
    }
    double past = (angle - stallAngle) / EASING;
    return slopeOf(Math.sin(angle), Math.cos(angle)) - firstSlope * (1 - past) * Math.exp(-past);
  }

  private double slopeOf(double sin, double cos) {
    double square = sin * sin;
    return ACROSS * (1 - 2 * square) - falling * cos * (2 + cos * cos / square);
  }

  /** Drag coefficient [1]. */
  double drag(double angle) {
    double b = Math.min(angle, FURTHEST);
    return dragAtStall + turned(b) * (lift(b) * Math.tan(b) - dragAtStall);
  }

  /** Moment coefficient about the quarter chord [1], from what it would be in attached flow. */
  double moment(double angle, double attached) {
    double b = Math.min(angle, FURTHEST);
    double normal = lift(b) * Math.cos(b) + drag(b) * Math.sin(b);
    double plate = -normal * (0.25 - 0.175 * (1 - 2 * b / Math.PI));
    return attached + turned(b) * (plate - attached);
  }

  private double turned(double b) {
    double past = (b - stallAngle) / TURNING;
    return 1 - Math.exp(-past * past);
  }
}
