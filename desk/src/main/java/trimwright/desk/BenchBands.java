package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.BandSolver;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimOutcome;

/**
 * The bands of all that the Bench shows of a case: some fifty solutions and two dozen tables, so
 * that they are asked for when a slider rests and not while it moves.
 *
 * @param study the case, its curve and its splits
 * @param bands the curve's bands
 * @param splits bands of the split at each of the curve's speeds, in its order; empty where there
 *     is none
 */
public record BenchBands(BenchStudy study, Bands bands, List<Optional<SplitBands>> splits) {
  /** Copies the list. */
  public BenchBands {
    splits = List.copyOf(splits);
  }

  /**
   * The bands of a case.
   *
   * @param caseFile the case
   * @param measures in which a person reads it
   * @param tables where the tables of its lifting surfaces come from
   * @param moved where those with one number moved come from
   * @return its bands
   */
  public static BenchBands of(
      CaseFile caseFile, Measures measures, SurfaceTables tables, SurfaceTables moved) {
    BenchStudy study = BenchStudy.of(caseFile, measures, tables);
    Curve curve = study.curve();
    double wished = caseFile.rideCase().rider().wishedSpeed();
    List<Double> speeds =
        Stream.concat(curve.outcomes().stream().map(TrimOutcome::speed), Stream.of(wished))
            .distinct()
            .sorted()
            .toList();
    Bands all = BandSolver.of(caseFile.rideCase(), caseFile.notes().knowledge(), speeds, moved);
    Optional<PointBand> atWished = all.points().get(speeds.indexOf(wished));
    List<Optional<PointBand>> points = new ArrayList<>();
    curve.outcomes().forEach(o -> points.add(all.points().get(speeds.indexOf(o.speed()))));
    List<Optional<SplitBands>> splits =
        IntStream.range(0, points.size())
            .mapToObj(i -> split(study.causes().get(i), points.get(i), atWished))
            .toList();
    Bands bands =
        new Bands(
            curve,
            points,
            all.levelSpeed(),
            all.evenFeetSpeeds(),
            all.rideableFrom(),
            all.rideableTo());
    return new BenchBands(study, bands, splits);
  }

  private static Optional<SplitBands> split(
      CauseOutcome cause, Optional<PointBand> ridden, Optional<PointBand> wished) {
    return cause instanceof CauseOutcome.Split && ridden.isPresent() && wished.isPresent()
        ? Optional.of(new SplitBands(ridden.get(), wished.get()))
        : Optional.empty();
  }
}
