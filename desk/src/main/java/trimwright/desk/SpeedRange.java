package trimwright.desk;

import java.util.List;
import trimwright.exchange.unit.Unit;

/**
 * The speeds of a curve: from one end to the other in even steps, the upper end included where a
 * step meets it. Immutable.
 */
public final class SpeedRange {
  /** Slowest speed through the water [km/h]: below it a foil carries nothing worth a number. */
  public static final double LOWEST_KMH = 1;

  /** Fastest speed through the water [km/h]: far beyond any foil board. */
  public static final double HIGHEST_KMH = 100;

  private static final EvenSteps.Limits KMH = new EvenSteps.Limits(LOWEST_KMH, HIGHEST_KMH, "km/h");
  private static final EvenSteps.Limits SI =
      new EvenSteps.Limits(
          Unit.KILOMETRE_PER_HOUR.toSi(LOWEST_KMH),
          Unit.KILOMETRE_PER_HOUR.toSi(HIGHEST_KMH),
          "m/s");

  private final List<Double> speeds;

  private SpeedRange(List<Double> speeds) {
    this.speeds = List.copyOf(speeds);
  }

  /**
   * A range in metres per second.
   *
   * @param from lower end [m/s]
   * @param to upper end [m/s]
   * @param step distance between neighbours [m/s]
   * @return the range
   * @throws RangeProblem if an end is outside {@link #LOWEST_KMH} to {@link #HIGHEST_KMH}, the ends
   *     are the wrong way round, the step is not above 0, or there would be over 2000 speeds
   */
  public static SpeedRange of(double from, double to, double step) {
    return new SpeedRange(EvenSteps.list(from, to, step, SI));
  }

  /**
   * A range in kilometres per hour.
   *
   * @param from lower end [km/h]
   * @param to upper end [km/h]
   * @param step distance between neighbours [km/h]
   * @return the range
   * @throws RangeProblem as in {@link #of}
   */
  public static SpeedRange kmh(double from, double to, double step) {
    return new SpeedRange(
        EvenSteps.list(from, to, step, KMH).stream().map(Unit.KILOMETRE_PER_HOUR::toSi).toList());
  }

  /**
   * One speed, in kilometres per hour, checked like the ends of a range.
   *
   * @param speed [km/h]
   * @return the same speed [m/s]
   * @throws RangeProblem if it is outside {@link #LOWEST_KMH} to {@link #HIGHEST_KMH}
   */
  public static double oneKmh(double speed) {
    return kmh(speed, speed, 1).list().get(0);
  }

  /** The speeds [m/s], rising; at least one. */
  public List<Double> list() {
    return speeds;
  }
}
