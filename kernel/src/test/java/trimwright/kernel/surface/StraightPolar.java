package trimwright.kernel.surface;

import trimwright.kernel.section.Polar;

/** Lift along a straight line without end, no drag, no moment. */
record StraightPolar(double slope, double zero) implements Polar {
  @Override
  public double lift(double angle) {
    return slope * (angle - zero);
  }

  @Override
  public double slope(double angle) {
    return slope;
  }

  @Override
  public double dragAt(double angle) {
    return 0;
  }

  @Override
  public double moment(double angle) {
    return 0;
  }

  @Override
  public double angleOfMaximumLift() {
    return 1e6;
  }

  @Override
  public double angleOfMinimumLift() {
    return -1e6;
  }

  @Override
  public double drag(double liftCoefficient) {
    return 0;
  }

  @Override
  public double maximumLift() {
    return 1e6;
  }

  @Override
  public double minimumLift() {
    return -1e6;
  }
}
