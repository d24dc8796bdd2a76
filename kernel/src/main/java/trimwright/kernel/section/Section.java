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

  /**
   * Angle of attack of no lift [rad] at any Reynolds number, negative for positive camber: with
   * {@link #liftSlope} the straight line that a {@link Polar} is measured from.
   */
  double zeroLiftAngle();

  /** Lift slope in real flow at any Reynolds number [1/rad]. */
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
  default double drag(double liftCoefficient, double reynolds, Finish finish) {
    return polar(reynolds, finish).drag(liftCoefficient);
  }

  /** Largest lift coefficient [1] at a Reynolds number [1] on the chord. */
  default double maximumLift(double reynolds, Finish finish) {
    return polar(reynolds, finish).maximumLift();
  }

  /** Most negative lift coefficient [1] at a Reynolds number [1] on the chord. */
  default double minimumLift(double reynolds, Finish finish) {
    return polar(reynolds, finish).minimumLift();
  }

  /**
   * Lowest pressure coefficient [1] on the surface at a lift coefficient [1], from inviscid flow.
   */
  double minimumPressure(double liftCoefficient);

  /**
   * The section at one Reynolds number.
   *
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return its lift, drag and moment over the angle there
   */
  Polar polar(double reynolds, Finish finish);

  /**
   * The section at an angle of attack.
   *
   * @param angleOfAttack leading edge up positive [rad]
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return coefficients at that angle, those of {@link #polar}
   */
  default SectionPoint at(double angleOfAttack, double reynolds, Finish finish) {
    Polar polar = polar(reynolds, finish);
    double lift = polar.lift(angleOfAttack);
    return new SectionPoint(
        angleOfAttack,
        lift,
        polar.dragAt(angleOfAttack),
        polar.moment(angleOfAttack),
        minimumPressure(lift),
        angleOfAttack >= polar.angleOfMinimumLift() && angleOfAttack <= polar.angleOfMaximumLift());
  }
}
