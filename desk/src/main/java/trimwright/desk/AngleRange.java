package trimwright.desk;

import java.util.List;
import trimwright.exchange.unit.Unit;

/**
 * Angles of attack from one end to the other in even steps, the upper end included where a step
 * meets it. Immutable.
 */
public final class AngleRange {
  /** Largest angle either way [degrees]: past it no wing of this kind still has attached flow. */
  public static final double LARGEST_DEGREES = 45;

  private static final EvenSteps.Limits DEGREES =
      new EvenSteps.Limits(-LARGEST_DEGREES, LARGEST_DEGREES, "degrees");

  private final List<Double> angles;

  private AngleRange(List<Double> angles) {
    this.angles = List.copyOf(angles);
  }

  /**
   * A range in degrees.
   *
   * @param from lower end [degrees]
   * @param to upper end [degrees]
   * @param step distance between neighbours [degrees]
   * @return the range
   * @throws RangeProblem if an end is more than {@link #LARGEST_DEGREES} either way, the ends are
   *     the wrong way round, the step is not above 0, or there would be over 2000 angles
   */
  public static AngleRange degrees(double from, double to, double step) {
    return new AngleRange(
        EvenSteps.list(from, to, step, DEGREES).stream().map(Unit.DEGREE::toSi).toList());
  }

  /** The angles [rad], rising; at least one. */
  public List<Double> list() {
    return angles;
  }
}
