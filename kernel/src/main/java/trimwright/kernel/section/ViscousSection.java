package trimwright.kernel.section;

/**
 * A section whose lift, drag, moment and limits are those of a {@link PolarTable}. Its straight
 * line (angle and moment of no lift, slope, aerodynamic centre) is that of the clean section at a
 * million, between 4 degrees below and above no lift. Immutable; may be shared between threads.
 */
public final class ViscousSection implements Section {
  /** Reynolds number of the straight line, chosen: amid those of wings. */
  private static final double LINE_REYNOLDS = 1e6;

  /** Angle to both sides of no lift between which the line is laid [rad]. */
  private static final double LINE_HALF = 4 * Math.PI / 180;

  private final Section outline;
  private final PolarTable table;
  private final double zeroLiftAngle;
  private final double liftSlope;
  private final double momentAtZeroLift;
  private final double aerodynamicCentre;

  /**
   * A section.
   *
   * @param outline the same section by any other way: name, outline and flow without friction are
   *     taken from it
   * @param table its polars, built from the same outline
   */
  public ViscousSection(Section outline, PolarTable table) {
    this.outline = outline;
    this.table = table;
    PolarRow row = table.at(LINE_REYNOLDS, Finish.CLEAN);
    zeroLiftAngle = row.zeroLiftAngle();
    liftSlope = row.meanSlope(LINE_HALF);
    momentAtZeroLift = row.moment(zeroLiftAngle);
    double rise = row.moment(zeroLiftAngle + LINE_HALF) - row.moment(zeroLiftAngle - LINE_HALF);
    aerodynamicCentre = 0.25 - rise / (2 * LINE_HALF * liftSlope);
  }

  /** Its polars. */
  public PolarTable table() {
    return table;
  }

  @Override
  public String name() {
    return outline.name();
  }

  @Override
  public SectionShape shape() {
    return outline.shape();
  }

  @Override
  public double zeroLiftAngle() {
    return zeroLiftAngle;
  }

  @Override
  public double liftSlope() {
    return liftSlope;
  }

  @Override
  public double momentAtZeroLift() {
    return momentAtZeroLift;
  }

  @Override
  public double aerodynamicCentre() {
    return aerodynamicCentre;
  }

  @Override
  public double minimumPressure(double liftCoefficient) {
    return outline.minimumPressure(liftCoefficient);
  }

  @Override
  public Polar polar(double reynolds, Finish finish) {
    return new ViscousPolar(table.at(reynolds, finish));
  }

  @Override
  public String toString() {
    return outline.name();
  }
}
