package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.BandSolver;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Input;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Reference;
import trimwright.kernel.band.SharedInputs;
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
 * @param reference what the case is held against, where something is pinned
 */
public record BenchBands(
    BenchStudy study,
    Bands bands,
    List<Optional<SplitBands>> splits,
    Optional<Reference> reference) {
  /** Copies the list. */
  public BenchBands {
    splits = List.copyOf(splits);
  }

  /**
   * The bands of a case.
   *
   * @param caseFile the case
   * @param pinned another case to hold it against
   * @param measures in which a person reads it
   * @param tables where the tables of its lifting surfaces come from
   * @param moved where those with one number moved come from
   * @param isStopped asked again and again whether to stop
   * @return its bands; empty where it was stopped
   */
  public static Optional<BenchBands> find(
      CaseFile caseFile,
      Optional<CaseFile> pinned,
      Measures measures,
      SurfaceTables tables,
      SurfaceTables moved,
      BooleanSupplier isStopped) {
    BenchStudy study = BenchStudy.of(caseFile, measures, tables);
    Curve curve = study.curve();
    double wished = caseFile.rideCase().rider().wishedSpeed();
    List<Double> speeds =
        Stream.concat(curve.outcomes().stream().map(TrimOutcome::speed), Stream.of(wished))
            .distinct()
            .sorted()
            .toList();
    Optional<Bands> all =
        BandSolver.find(
            caseFile.rideCase(), caseFile.notes().knowledge(), speeds, moved, isStopped);
    Optional<Reference> reference =
        all.isEmpty() ? Optional.empty() : reference(caseFile, pinned, curve, moved, isStopped);
    return all.isEmpty() || pinned.isPresent() && reference.isEmpty()
        ? Optional.empty()
        : Optional.of(of(study, all.get(), speeds, wished, reference));
  }

  private static Optional<Reference> reference(
      CaseFile caseFile,
      Optional<CaseFile> pinned,
      Curve curve,
      SurfaceTables moved,
      BooleanSupplier isStopped) {
    if (pinned.isEmpty()) {
      return Optional.empty();
    }
    CaseFile other = pinned.get();
    Set<Input> shared =
        SharedInputs.between(
            caseFile.rideCase(),
            caseFile.notes().knowledge(),
            other.rideCase(),
            other.notes().knowledge());
    List<Double> speeds = curve.outcomes().stream().map(TrimOutcome::speed).toList();
    return BandSolver.find(other.rideCase(), other.notes().knowledge(), speeds, moved, isStopped)
        .map(bands -> new Reference(bands, shared));
  }

  /** Of all speeds those of the curve: the wished one need not be on the grid. */
  private static BenchBands of(
      BenchStudy study,
      Bands all,
      List<Double> speeds,
      double wished,
      Optional<Reference> reference) {
    Optional<PointBand> atWished = all.points().get(speeds.indexOf(wished));
    List<Optional<PointBand>> points = new ArrayList<>();
    study.curve().outcomes().forEach(o -> points.add(all.points().get(speeds.indexOf(o.speed()))));
    List<Optional<SplitBands>> splits =
        IntStream.range(0, points.size())
            .mapToObj(i -> split(study.causes().get(i), points.get(i), atWished))
            .toList();
    Bands bands =
        new Bands(
            study.curve(),
            points,
            all.levelSpeed(),
            all.evenFeetSpeeds(),
            all.rideableFrom(),
            all.rideableTo());
    return new BenchBands(study, bands, splits, reference);
  }

  private static Optional<SplitBands> split(
      CauseOutcome cause, Optional<PointBand> ridden, Optional<PointBand> wished) {
    return cause instanceof CauseOutcome.Split && ridden.isPresent() && wished.isPresent()
        ? Optional.of(new SplitBands(ridden.get(), wished.get()))
        : Optional.empty();
  }
}
