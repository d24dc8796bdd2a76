package trimwright.kernel.surface;

import trimwright.kernel.section.Polar;

/**
 * A polar whose section stands turned in its strip: angles count from where the chord line would be
 * without the turn. Immutable.
 */
final class TurnedPolar implements Polar {
  private final Polar polar;
  private final double by;

  /**
   * A turned section.
   *
   * @param polar the section's own
   * @param by leading edge up positive [rad]
   */
  TurnedPolar(Polar polar, double by) {
    this.polar = polar;
    this.by = by;
  }

  @Override
  public double lift(double angle) {
    return polar.lift(angle + by);
  }

  @Override
  public double slope(double angle) {
    return polar.slope(angle + by);
  }

  @Override
  public double dragAt(double angle) {
    return polar.dragAt(angle + by);
  }

  @Override
  public double moment(double angle) {
    return polar.moment(angle + by);
  }

  @Override
  public double angleOfMaximumLift() {
    return polar.angleOfMaximumLift() - by;
  }

  @Override
  public double angleOfMinimumLift() {
    return polar.angleOfMinimumLift() - by;
  }

  @Override
  public double drag(double liftCoefficient) {
    return polar.drag(liftCoefficient);
  }

  @Override
  public double maximumLift() {
    return polar.maximumLift();
  }

  @Override
  public double minimumLift() {
    return polar.minimumLift();
  }
}
