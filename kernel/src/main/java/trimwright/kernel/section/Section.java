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

  /**
   * The section at one Reynolds number.
   *
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return its drag and lift limits there, bit for bit those of this section
   */
  default Polar polar(double reynolds, Finish finish) {
    Section section = this;
    return new Polar() {
      @Override
      public double drag(double liftCoefficient) {
        return section.drag(liftCoefficient, reynolds, finish);
      }

      @Override
      public double maximumLift() {
        return section.maximumLift(reynolds, finish);
      }

      @Override
      public double minimumLift() {
        return section.minimumLift(reynolds, finish);
      }
    };
  }

  /**
   * The section at an angle of attack.
   *
   * <p>Lift follows the slope and eases into the limit: the slope's value over the 12th root of 1 +
   * its 12th power in limits, which is 1 % low at 80 % of the limit and 6 % low where the two meet
   * (the shape of NACA 0012's lift curve at 0.36 million, SAND80-2114). Past the limit the lift
   * stays close to it, which is too much for a sudden stall, and the drag goes on growing with the
   * lift that the slope asks for.
   *
   * @param angleOfAttack leading edge up positive [rad]
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return coefficients at that angle
   */
  default SectionPoint at(double angleOfAttack, double reynolds, Finish finish) {
    double asked = liftSlope() * (angleOfAttack - zeroLiftAngle());
    double limit = asked >= 0 ? maximumLift(reynolds, finish) : minimumLift(reynolds, finish);
    double share = asked / limit;
    double lift = asked / Math.pow(1 + Math.pow(share, 12), 1.0 / 12);
    return new SectionPoint(
        angleOfAttack,
        lift,
        drag(asked, reynolds, finish),
        momentAtZeroLift() + lift * (0.25 - aerodynamicCentre()),
        minimumPressure(lift),
        share <= 1);
  }
}
