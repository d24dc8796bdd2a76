package trimwright.desk;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.band.BandSolver;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimOutcome;

/**
 * A case and what can be asked about it. Making a study computes the lifting surfaces once; every
 * question afterwards is quick.
 *
 * <p>Holds one solver with its work space: not safe for use by several threads at once. Make one
 * study per request or per thread.
 */
public final class CaseStudy {
  /** Speeds nearer than this are one and the same [m/s]: a twentieth of a km/h. */
  public static final double SAME_SPEED = 0.05 / 3.6;

  private final CaseFile caseFile;
  private final CaseSolver solver;

  private CaseStudy(CaseFile caseFile) {
    this.caseFile = Objects.requireNonNull(caseFile, "caseFile");
    this.solver = CaseSolver.of(caseFile.rideCase());
  }

  /**
   * A study of one case.
   *
   * @param caseFile the case as it was read
   * @return its study
   */
  public static CaseStudy of(CaseFile caseFile) {
    return new CaseStudy(caseFile);
  }

  /** The case studied. */
  public CaseFile caseFile() {
    return caseFile;
  }

  /**
   * Trim points over speed, with the speeds that people ask for.
   *
   * @param range the speeds
   * @return the curve
   */
  public Curve curve(SpeedRange range) {
    return solver.curve(range.list());
  }

  /**
   * The trim at one speed.
   *
   * @param speed through the water [m/s], above 0
   * @return a trim point, or the reason why there is none
   */
  public TrimOutcome trim(double speed) {
    return solver.trim(speed);
  }

  /**
   * How much of the ride comes from its speed and how much from the setup, with the pitch measured
   * on the water where the case file gives one.
   *
   * @param riddenSpeed the speed ridden [m/s], above 0
   * @return the split, or the speed that has no trim point
   */
  public CauseOutcome cause(double riddenSpeed) {
    return CauseSplit.of(solver, riddenSpeed, caseFile.notes().measuredPitch());
  }

  /**
   * The curve with its bands: some two dozen tables of the lifting surfaces.
   *
   * @param range the speeds
   * @return the curve and its bands
   */
  public Bands bands(SpeedRange range) {
    return BandSolver.of(
        caseFile.rideCase(), caseFile.notes().knowledge(), range.list(), SurfaceTables.ANEW);
  }

  /**
   * The curve with its bands, with one speed more that lies where the range has no step.
   *
   * @param range the speeds
   * @param speed the one more [m/s], above 0; the range's speeds nearer to it than {@link
   *     #SAME_SPEED} give way to it
   * @return the curve and its bands
   */
  public Bands bands(SpeedRange range, double speed) {
    List<Double> speeds =
        DoubleStream.concat(
                range.list().stream()
                    .mapToDouble(Double::doubleValue)
                    .filter(s -> Math.abs(s - speed) > SAME_SPEED),
                DoubleStream.of(speed))
            .sorted()
            .boxed()
            .toList();
    return BandSolver.of(
        caseFile.rideCase(), caseFile.notes().knowledge(), speeds, SurfaceTables.ANEW);
  }

  /**
   * The bands of the trim at one speed.
   *
   * @param speed through the water [m/s], above 0
   * @return its bands; empty where there is no trim
   */
  public Optional<PointBand> band(double speed) {
    return BandSolver.of(
            caseFile.rideCase(), caseFile.notes().knowledge(), List.of(speed), SurfaceTables.ANEW)
        .points()
        .get(0);
  }

  /**
   * The bands of a split.
   *
   * @param outcome what the question for the cause gave
   * @return its bands; empty where there is no split
   */
  public Optional<SplitBands> bands(CauseOutcome outcome) {
    if (!(outcome instanceof CauseOutcome.Split split)) {
      return Optional.empty();
    }
    List<Double> speeds =
        DoubleStream.of(split.ridden().speed(), split.wished().speed())
            .distinct()
            .sorted()
            .boxed()
            .toList();
    Bands bands =
        BandSolver.of(
            caseFile.rideCase(), caseFile.notes().knowledge(), speeds, SurfaceTables.ANEW);
    return Optional.of(
        new SplitBands(
            bands.points().get(speeds.indexOf(split.ridden().speed())).orElseThrow(),
            bands.points().get(speeds.indexOf(split.wished().speed())).orElseThrow()));
  }
}
