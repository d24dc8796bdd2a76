package trimwright.kernel.section;

import trimwright.kernel.numeric.LimitedCubic;

/**
 * Lift, drag, moment and lowest pressure of a section over the angle of attack at one Reynolds
 * number and finish, as curves through computed points that never overshoot them. Immutable; may be
 * shared between threads.
 */
public final class PolarRow {
  /** Quantities: lift, drag, moment, lowest pressure. */
  static final int QUANTITIES = 4;

  static final int LIFT = 0;
  static final int DRAG = 1;
  static final int MOMENT = 2;
  static final int PRESSURE = 3;

  /** A fall of lift that counts as a stall and not as a ripple of the curve [1]. */
  private static final double FALL = 0.01;

  /** Angles closer than this are one: what turning degrees into radians may do [rad]. */
  private static final double SAME_ANGLE = 1e-9;

  private final double[] angles;
  private final double[][] values;
  private final LimitedCubic[] curves = new LimitedCubic[QUANTITIES];
  private final PointKind[] kinds;
  private final double zeroLiftAngle;
  private final double angleOfMaximumLift;
  private final double angleOfMinimumLift;

  /**
   * How the points came about.
   *
   * @param computed points at which layers and outer flow agreed [1]
   * @param bridged points without agreement between two with it: interpolated [1]
   * @param extended points beyond the last agreement: rule for deep stall [1]
   */
  public record Counts(int computed, int bridged, int extended) {
    /** Both together. */
    Counts plus(Counts other) {
      return new Counts(
          computed + other.computed, bridged + other.bridged, extended + other.extended);
    }
  }

  /**
   * A row.
   *
   * @param angles of attack, rising [rad]; not copied
   * @param values per quantity a value per angle; not copied
   * @param kinds how each angle came about; not copied
   */
  PolarRow(double[] angles, double[][] values, PointKind[] kinds) {
    this.angles = angles;
    this.values = values;
    this.kinds = kinds;
    for (int k = 0; k < QUANTITIES; k++) {
      // Lift is level at the last angles, so that what stands beyond them can begin so.
      curves[k] =
          k == LIFT
              ? LimitedCubic.levelAtEnds(angles, values[k])
              : new LimitedCubic(angles, values[k]);
    }
    zeroLiftAngle = findZeroLift();
    angleOfMaximumLift = extreme(1);
    angleOfMinimumLift = extreme(-1);
  }

  /** The crossing of no lift nearest to no angle. */
  private double findZeroLift() {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 1; i < angles.length; i++) {
      if (values[LIFT][i - 1] <= 0 && values[LIFT][i] > 0) {
        double a = angles[i - 1];
        double b = angles[i];
        for (int k = 0; k < 60; k++) {
          double middle = 0.5 * (a + b);
          if (lift(middle) <= 0) {
            a = middle;
          } else {
            b = middle;
          }
        }
        if (Math.abs(a) < Math.abs(best)) {
          best = a;
        }
      }
    }
    return Double.isInfinite(best) ? angles[0] : best;
  }

  /**
   * First computed angle away from no lift after which lift falls; the last one where it never
   * does. Between computed angles the curve has no extreme.
   */
  private double extreme(int side) {
    int i = side > 0 ? 0 : angles.length - 1;
    while (i + side >= 0 && i + side < angles.length && side * (angles[i] - zeroLiftAngle) <= 0) {
      i += side;
    }
    int best = i;
    for (; i >= 0 && i < angles.length; i += side) {
      double size = side * values[LIFT][i];
      if (size > side * values[LIFT][best]) {
        best = i;
      } else if (size < side * values[LIFT][best] - FALL) {
        break;
      }
    }
    return angles[best];
  }

  /** Lift coefficient [1] at an angle of attack [rad]. */
  public double lift(double angle) {
    return curves[LIFT].value(angle);
  }

  /** Slope of the lift coefficient [1/rad]. */
  public double slope(double angle) {
    return curves[LIFT].slope(angle);
  }

  /** Drag coefficient [1]. */
  public double drag(double angle) {
    return curves[DRAG].value(angle);
  }

  /** Moment coefficient about the quarter chord, nose up positive [1]. */
  public double moment(double angle) {
    return curves[MOMENT].value(angle);
  }

  /** Lowest pressure coefficient on the surface [1]. */
  public double minimumPressure(double angle) {
    return curves[PRESSURE].value(angle);
  }

  /** Angle of no lift [rad]. */
  public double zeroLiftAngle() {
    return zeroLiftAngle;
  }

  /** Angle of the largest lift [rad]: the first from which lift falls. */
  public double angleOfMaximumLift() {
    return angleOfMaximumLift;
  }

  /** Angle of the most negative lift [rad]. */
  public double angleOfMinimumLift() {
    return angleOfMinimumLift;
  }

  /** Largest lift coefficient [1]. */
  public double maximumLift() {
    return lift(angleOfMaximumLift);
  }

  /** Most negative lift coefficient [1]. */
  public double minimumLift() {
    return lift(angleOfMinimumLift);
  }

  /**
   * Mean slope of the lift within an angle of no lift [1/rad].
   *
   * @param half how far to both sides [rad]
   */
  public double meanSlope(double half) {
    return (lift(zeroLiftAngle + half) - lift(zeroLiftAngle - half)) / (2 * half);
  }

  /** Smallest drag coefficient [1] at any computed angle. */
  public double minimumDrag() {
    double least = Double.POSITIVE_INFINITY;
    for (double d : values[DRAG]) {
      least = Math.min(least, d);
    }
    return least;
  }

  /** First angle [rad]; below it the curves go on straight. */
  public double from() {
    return angles[0];
  }

  /** Last angle [rad]. */
  public double to() {
    return angles[angles.length - 1];
  }

  /** How the points came about. */
  public Counts counts() {
    int[] of = new int[PointKind.values().length];
    for (PointKind kind : kinds) {
      of[kind.ordinal()]++;
    }
    return new Counts(of[0], of[1], of[2]);
  }

  /**
   * How the values at an angle came about.
   *
   * @param angle of attack [rad]
   * @return at an angle of the row its own kind; between two the less sure of theirs
   */
  public PointKind kind(double angle) {
    int above = 0;
    while (above < angles.length - 1 && angles[above] < angle - SAME_ANGLE) {
      above++;
    }
    boolean on = above == 0 || Math.abs(angles[above] - angle) <= SAME_ANGLE;
    return on ? kinds[above] : kinds[above].or(kinds[above - 1]);
  }

  PointKind[] kinds() {
    return kinds;
  }

  double[] angles() {
    return angles;
  }

  double value(int quantity, int angle) {
    return values[quantity][angle];
  }
}
