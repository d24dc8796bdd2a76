package trimwright.kernel.section;

/**
 * An {@link AdjustedSection} at one Reynolds number: the base's polar turned and stretched, so that
 * it has the adjusted line of no lift, slope and limits. Immutable.
 */
final class AdjustedPolar implements Polar {
  private final Section section;
  private final Section base;
  private final Polar polar;
  private final double dragFactor;
  private final double limitFactor;

  /** Angle from no lift of the base over that of the adjusted section, where both do the same. */
  private final double stretch;

  AdjustedPolar(Section section, Section base, Polar polar, double dragFactor, double limitFactor) {
    this.section = section;
    this.base = base;
    this.polar = polar;
    this.dragFactor = dragFactor;
    this.limitFactor = limitFactor;
    stretch = section.liftSlope() / (base.liftSlope() * limitFactor);
  }

  private double inBase(double angle) {
    return base.zeroLiftAngle() + stretch * (angle - section.zeroLiftAngle());
  }

  private double outOfBase(double angle) {
    return section.zeroLiftAngle() + (angle - base.zeroLiftAngle()) / stretch;
  }

  /** The section's own straight line, and what the base leaves its line by. */
  @Override
  public double lift(double angle) {
    double there = inBase(angle);
    double straight = base.liftSlope() * (there - base.zeroLiftAngle());
    return section.liftSlope() * (angle - section.zeroLiftAngle())
        + limitFactor * (polar.lift(there) - straight);
  }

  @Override
  public double slope(double angle) {
    return limitFactor * stretch * polar.slope(inBase(angle));
  }

  /** The base's at the same share of its limit, brought to the drag of this lift. */
  @Override
  public double dragAt(double angle) {
    double there = inBase(angle);
    if (limitFactor == 1) {
      return dragFactor * polar.dragAt(there);
    }
    double atBase = polar.lift(there);
    double moved = polar.drag(limitFactor * atBase) - polar.drag(atBase);
    return dragFactor * (polar.dragAt(there) + moved);
  }

  @Override
  public double moment(double angle) {
    double own = polar.moment(inBase(angle)) - base.momentAtZeroLift();
    return section.momentAtZeroLift() + limitFactor * own;
  }

  @Override
  public double angleOfMaximumLift() {
    return outOfBase(polar.angleOfMaximumLift());
  }

  @Override
  public double angleOfMinimumLift() {
    return outOfBase(polar.angleOfMinimumLift());
  }

  @Override
  public double drag(double liftCoefficient) {
    return dragFactor * polar.drag(liftCoefficient);
  }

  @Override
  public double maximumLift() {
    return limitFactor * polar.maximumLift();
  }

  @Override
  public double minimumLift() {
    return limitFactor * polar.minimumLift();
  }
}
