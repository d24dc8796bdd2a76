package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimOutcome;

/**
 * All that the Bench shows of a case at every speed of its grid, worked out in one go: trim points
 * with the speeds that people ask for, and the cause split at each.
 *
 * <p>The grid steps by one unit of the speed shown, so that every speed that can be chosen is a
 * computed point: 10 to 40 km/h or 6 to 25 mph, widened to hold the wished speed.
 *
 * @param caseFile the case
 * @param measures in which a person reads it; decides the grid
 * @param curve trim points over the grid
 * @param causes the split at each of the curve's speeds, in its order
 */
public record BenchStudy(
    CaseFile caseFile, Measures measures, Curve curve, List<CauseOutcome> causes) {
  private static final int SLOWEST_KMH = 10;
  private static final int FASTEST_KMH = 40;
  private static final int SLOWEST_MPH = 6;
  private static final int FASTEST_MPH = 25;

  /** Rounding of a whole wished speed on its way to metres per second and back [steps]. */
  private static final double ROUNDING = 1e-9;

  /** Copies the list. */
  public BenchStudy {
    causes = List.copyOf(causes);
  }

  /**
   * The study of a case, its lifting surfaces computed anew.
   *
   * @param caseFile the case
   * @param measures in which a person reads it
   * @return its study
   */
  public static BenchStudy of(CaseFile caseFile, Measures measures) {
    return of(caseFile, measures, SurfaceTables.ANEW);
  }

  /**
   * The study of a case.
   *
   * @param caseFile the case
   * @param measures in which a person reads it
   * @param tables where the lifting surfaces' table comes from
   * @return its study, the same whether the table was kept or made anew
   */
  public static BenchStudy of(CaseFile caseFile, Measures measures, SurfaceTables tables) {
    CaseSolver solver = CaseSolver.of(caseFile.rideCase(), tables);
    double wishedSpeed = caseFile.rideCase().rider().wishedSpeed();
    Curve curve = solver.curve(grid(measures, wishedSpeed));
    TrimOutcome wished =
        curve.outcomes().stream()
            .filter(outcome -> outcome.speed() == wishedSpeed)
            .findFirst()
            .orElseGet(() -> solver.trim(wishedSpeed));
    return new BenchStudy(
        caseFile,
        measures,
        curve,
        CauseSplit.along(solver, curve.outcomes(), wished, caseFile.notes().measuredPitch()));
  }

  /** The speeds of the grid [m/s]. */
  static List<Double> grid(Measures measures, double wishedSpeed) {
    boolean metric = measures == Measures.METRIC;
    Unit unit = metric ? Unit.KILOMETRE_PER_HOUR : Unit.MILE_PER_HOUR;
    double wished = unit.fromSi(wishedSpeed);
    int from = Math.min(metric ? SLOWEST_KMH : SLOWEST_MPH, (int) Math.floor(wished + ROUNDING));
    int to = Math.max(metric ? FASTEST_KMH : FASTEST_MPH, (int) Math.ceil(wished - ROUNDING));
    List<Double> speeds = new ArrayList<>();
    // No trim has ever been at rest.
    for (int step = Math.max(1, from); step <= to; step++) {
      speeds.add(unit.toSi(step));
    }
    return speeds;
  }
}
