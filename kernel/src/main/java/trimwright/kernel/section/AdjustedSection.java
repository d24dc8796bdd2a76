package trimwright.kernel.section;

/**
 * A section with some of its numbers changed by a little, for asking how much an error in them
 * matters. Immutable.
 */
public final class AdjustedSection implements Section {
  /**
   * Zero-lift angle that a chord's height of camber makes [rad]: thin-aerofoil theory on the mean
   * line with its vertex at 40 % (-2.0772 degrees at 2 %, check c-thin-a0-24xx), in real flow.
   */
  private static final double ZERO_LIFT_PER_CAMBER =
      Math.toRadians(-2.0772) / 0.02 * CorrelatedSection.ZERO_LIFT_FACTOR;

  /** Moment at zero lift likewise [1]: -0.05312 at 2 % (check c-thin-cm-24xx). */
  private static final double MOMENT_PER_CAMBER = -0.05312 / 0.02 * CorrelatedSection.MOMENT_FACTOR;

  private final Section base;
  private final SectionShape shape;
  private final double slopeFactor;
  private final double camber;
  private final double moment;
  private final double dragFactor;
  private final double limitFactor;

  private AdjustedSection(
      Section base,
      SectionShape shape,
      double slopeFactor,
      double camber,
      double moment,
      double dragFactor,
      double limitFactor) {
    this.base = base;
    this.shape = shape;
    this.slopeFactor = slopeFactor;
    this.camber = camber;
    this.moment = moment;
    this.dragFactor = dragFactor;
    this.limitFactor = limitFactor;
  }

  /**
   * With another lift slope.
   *
   * @param base the section
   * @param factor of the slope [1]
   */
  public static Section slope(Section base, double factor) {
    return new AdjustedSection(base, base.shape(), factor, 0, 0, 1, 1);
  }

  /**
   * With more camber: zero-lift angle and moment follow, the outline is left as it is.
   *
   * @param base the section
   * @param by height of the mean line [chords]
   */
  public static Section camber(Section base, double by) {
    return new AdjustedSection(base, base.shape(), 1, by, 0, 1, 1);
  }

  /**
   * With another moment at every lift.
   *
   * @param base the section
   * @param by moment about the quarter chord, nose up positive [1]
   */
  public static Section moment(Section base, double by) {
    return new AdjustedSection(base, base.shape(), 1, 0, by, 1, 1);
  }

  /**
   * With more drag at every lift.
   *
   * @param base the section
   * @param factor of the drag [1]
   */
  public static Section drag(Section base, double factor) {
    return new AdjustedSection(base, base.shape(), 1, 0, 0, factor, 1);
  }

  /**
   * With other limits of lift.
   *
   * @param base the section
   * @param factor of largest and most negative lift [1]
   */
  public static Section limit(Section base, double factor) {
    return new AdjustedSection(base, base.shape(), 1, 0, 0, 1, factor);
  }

  /**
   * Thicker: the outline about the same mean line, the lift slope by its loss with thickness, the
   * drag by its form factor.
   *
   * @param base the section
   * @param by thickness [chords]; the section stays at least half as thick
   */
  public static Section thickness(Section base, double by) {
    double before = base.shape().thickness();
    double after = Math.max(0.5 * before, before + by);
    return new AdjustedSection(
        base,
        scaled(base.shape(), after / before),
        (1 - CorrelatedSection.SLOPE_LOSS * after) / (1 - CorrelatedSection.SLOPE_LOSS * before),
        0,
        0,
        FormFactor.section(after) / FormFactor.section(before),
        1);
  }

  private static SectionShape scaled(SectionShape shape, double factor) {
    double[] x = shape.x();
    double[] y = shape.y();
    double[] newX = x.clone();
    double[] newY = y.clone();
    for (int i = 0; i < x.length; i++) {
      int facing = x.length - 1 - i;
      newX[i] = 0.5 * (x[i] + x[facing]) + 0.5 * factor * (x[i] - x[facing]);
      newY[i] = 0.5 * (y[i] + y[facing]) + 0.5 * factor * (y[i] - y[facing]);
    }
    return new SectionShape(newX, newY);
  }

  @Override
  public String name() {
    return base.name();
  }

  @Override
  public SectionShape shape() {
    return shape;
  }

  @Override
  public double zeroLiftAngle() {
    return base.zeroLiftAngle() + camber * ZERO_LIFT_PER_CAMBER;
  }

  @Override
  public double liftSlope() {
    return base.liftSlope() * slopeFactor;
  }

  @Override
  public double momentAtZeroLift() {
    return base.momentAtZeroLift() + camber * MOMENT_PER_CAMBER + moment;
  }

  @Override
  public double aerodynamicCentre() {
    return base.aerodynamicCentre();
  }

  @Override
  public Polar polar(double reynolds, Finish finish) {
    return new AdjustedPolar(this, base, base.polar(reynolds, finish), dragFactor, limitFactor);
  }

  @Override
  public double minimumPressure(double liftCoefficient) {
    return base.minimumPressure(liftCoefficient);
  }

  @Override
  public String toString() {
    return name();
  }
}
