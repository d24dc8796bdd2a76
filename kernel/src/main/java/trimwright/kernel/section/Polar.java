package trimwright.kernel.section;

/**
 * A section at one Reynolds number: what stays to be asked when the speed is fixed and the angle is
 * not. Lift may leave the straight line of {@link Section#liftSlope} anywhere, near no lift too.
 * All is defined at every angle, past both limits as well. Immutable; may be shared between
 * threads.
 */
public interface Polar {
  /** Step of the angle in slopes that are not known otherwise [rad]. */
  double SLOPE_STEP = 1e-5;

  /**
   * Lift coefficient [1], continuous with its slope.
   *
   * @param angle of attack from the chord line, leading edge up positive [rad]
   */
  double lift(double angle);

  /**
   * Slope of the lift coefficient [1/rad].
   *
   * @param angle as for {@link #lift}
   */
  default double slope(double angle) {
    return (lift(angle + SLOPE_STEP) - lift(angle - SLOPE_STEP)) / (2 * SLOPE_STEP);
  }

  /**
   * Drag coefficient [1], past the limits as well: there it follows the angle and not a lift that
   * is not there.
   *
   * @param angle as for {@link #lift}
   */
  double dragAt(double angle);

  /**
   * Moment coefficient about the quarter chord, nose up positive [1].
   *
   * @param angle as for {@link #lift}
   */
  double moment(double angle);

  /**
   * Angle at which the lift of attached flow is largest [rad]: the section stalls beyond. A plate
   * across the stream may lift more again, where that is little.
   */
  double angleOfMaximumLift();

  /** Angle at which lift is most negative [rad]: the section stalls below. */
  double angleOfMinimumLift();

  /**
   * Drag coefficient of attached flow [1].
   *
   * @param liftCoefficient section lift coefficient [1]
   */
  double drag(double liftCoefficient);

  /** Largest lift coefficient [1]. */
  double maximumLift();

  /** Most negative lift coefficient [1]. */
  double minimumLift();
}
