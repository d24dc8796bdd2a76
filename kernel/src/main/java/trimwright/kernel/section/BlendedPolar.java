package trimwright.kernel.section;

/**
 * A section between two others, at one Reynolds number: the straight line between in every
 * coefficient, both taken at one angle from their lines of no lift. Immutable.
 */
final class BlendedPolar implements Polar {
  private final Polar inner;
  private final Polar outer;
  private final double share;
  private final double innerZero;
  private final double outerZero;
  private final double innerSlope;
  private final double outerSlope;
  private final double zero;
  private final double slope;

  BlendedPolar(Section a, Polar inner, Section b, Polar outer, double share) {
    this.inner = inner;
    this.outer = outer;
    this.share = share;
    innerZero = a.zeroLiftAngle();
    outerZero = b.zeroLiftAngle();
    innerSlope = a.liftSlope();
    outerSlope = b.liftSlope();
    zero = mix(innerZero, outerZero);
    slope = mix(innerSlope, outerSlope);
  }

  private double mix(double a, double b) {
    return a + share * (b - a);
  }

  private double inInner(double angle) {
    return angle - zero + innerZero;
  }

  private double inOuter(double angle) {
    return angle - zero + outerZero;
  }

  /** The blend's straight line, and between the two what either leaves its own by. */
  @Override
  public double lift(double angle) {
    double a = inInner(angle);
    double b = inOuter(angle);
    double away =
        mix(
            inner.lift(a) - innerSlope * (a - innerZero),
            outer.lift(b) - outerSlope * (b - outerZero));
    return slope * (angle - zero) + away;
  }

  @Override
  public double slope(double angle) {
    return mix(inner.slope(inInner(angle)), outer.slope(inOuter(angle)));
  }

  @Override
  public double dragAt(double angle) {
    return mix(inner.dragAt(inInner(angle)), outer.dragAt(inOuter(angle)));
  }

  @Override
  public double moment(double angle) {
    return mix(inner.moment(inInner(angle)), outer.moment(inOuter(angle)));
  }

  @Override
  public double angleOfMaximumLift() {
    return zero
        + mix(inner.angleOfMaximumLift() - innerZero, outer.angleOfMaximumLift() - outerZero);
  }

  @Override
  public double angleOfMinimumLift() {
    return zero
        + mix(inner.angleOfMinimumLift() - innerZero, outer.angleOfMinimumLift() - outerZero);
  }

  @Override
  public double drag(double liftCoefficient) {
    return mix(inner.drag(liftCoefficient), outer.drag(liftCoefficient));
  }

  @Override
  public double maximumLift() {
    return mix(inner.maximumLift(), outer.maximumLift());
  }

  @Override
  public double minimumLift() {
    return mix(inner.minimumLift(), outer.minimumLift());
  }
}
