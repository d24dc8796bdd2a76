package trimwright.kernel.section;

/**
 * What a wing section does in two-dimensional flow. Coefficients are made dimensionless with the
 * chord; angles are measured from the chord line, leading edge up positive.
 *
 * <p>This is the door between sections and everything that stands on them: a model built on
 * friction lines and measured data comes in here first, a boundary-layer solution later, and
 * nothing outside this package has to know. Implementations are immutable and may be shared between
 * threads.
 */
public interface Section {

  /** A short name for people, such as {@code naca2412}. */
  String name();

  /** The outline this section was computed from. */
  SectionShape shape();

  /** Angle of attack of no lift [rad]; negative for positive camber. */
  double zeroLiftAngle();

  /** Lift slope in real flow [1/rad]. */
  double liftSlope();

  /** Pitching moment coefficient about the quarter chord at zero lift, nose up positive [1]. */
  double momentAtZeroLift();

  /** Aerodynamic centre, behind the leading edge [chords]. */
  double aerodynamicCentre();

  /**
   * Drag coefficient [1] of attached flow.
   *
   * @param liftCoefficient section lift coefficient [1]
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   */
  double drag(double liftCoefficient, double reynolds, Finish finish);

  /** Largest lift coefficient [1] at a Reynolds number [1] on the chord. */
  double maximumLift(double reynolds, Finish finish);

  /** Most negative lift coefficient [1] at a Reynolds number [1] on the chord. */
  double minimumLift(double reynolds, Finish finish);

  /**
   * Lowest pressure coefficient [1] on the surface at a lift coefficient [1], from inviscid flow.
   */
  double minimumPressure(double liftCoefficient);
}
