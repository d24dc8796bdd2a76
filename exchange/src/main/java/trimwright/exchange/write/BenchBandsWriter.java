package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.ApartWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.SureWords;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Reference;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.band.Spread;
import trimwright.kernel.cause.CauseOutcome;

/**
 * The bands of a curve that a page shows already: numbers and words for every one of its speeds, in
 * their order. Names of numbers and sentences stand once.
 */
public final class BenchBandsWriter {
  private static final int SPEED_DECIMALS = 2;

  private final Measures measures;
  private final CaseFile caseFile;
  private final Bands bands;
  private final Optional<Reference> reference;
  private final JsonStream json;
  private final Numbered<String> phrases = new Numbered<>();

  private BenchBandsWriter(
      JsonStream json,
      Measures measures,
      CaseFile caseFile,
      Bands bands,
      Optional<Reference> reference) {
    this.reference = reference;
    this.json = json;
    this.measures = measures;
    this.caseFile = caseFile;
    this.bands = bands;
  }

  /**
   * The answer for a case.
   *
   * @param sequence number of the question, handed back
   * @param measures what the words speak in
   * @param caseFile the case
   * @param bands its curve with the bands
   * @param causes the cause split at each of the curve's speeds, in its order
   * @param splits bands of each split
   * @param reference what the case is held against, where something is pinned
   * @return JSON on one line that satisfies {@code bench_bands.schema.json}
   * @throws IllegalArgumentException if there is not one cause and one split for each speed
   */
  public static String accepted(
      long sequence,
      Measures measures,
      CaseFile caseFile,
      Bands bands,
      List<CauseOutcome> causes,
      List<Optional<SplitBands>> splits,
      Optional<Reference> reference) {
    int count = bands.points().size();
    if (causes.size() != count || splits.size() != count) {
      throw new IllegalArgumentException(
          "there must be a cause and a split for each of "
              + count
              + " speeds, were "
              + causes.size()
              + " and "
              + splits.size());
    }
    return JsonStream.text(
        json -> {
          json.whole("sequence", sequence)
              .flag("accepted", true)
              .text("case_digest", caseFile.digest())
              .text("measures", Codes.of(measures))
              .texts("band_keys", BandColumn.ALL.stream().map(BandColumn::name).toList());
          new BenchBandsWriter(json, measures, caseFile, bands, reference).write(causes, splits);
        });
  }

  /**
   * The answer to a question that was given up because somebody moved a slider.
   *
   * @param sequence number of the question, handed back
   * @return JSON on one line that satisfies {@code bench_bands.schema.json}
   */
  public static String stopped(long sequence) {
    return JsonStream.text(
        json -> json.whole("sequence", sequence).flag("accepted", false).flag("stopped", true));
  }

  private void write(List<CauseOutcome> causes, List<Optional<SplitBands>> splits) {
    json.list(
        "points",
        () -> IntStream.range(0, causes.size()).iterator(),
        i -> point(i, causes.get(i), splits.get(i)));
    json.texts("phrases", phrases.all());
    speed("level_speed_kmh", bands.levelSpeed());
    speed("rideable_from_kmh", bands.rideableFrom());
    speed("rideable_to_kmh", bands.rideableTo());
  }

  private void point(int index, CauseOutcome cause, Optional<SplitBands> split) {
    Optional<PointBand> band = bands.points().get(index);
    if (band.isEmpty()) {
      json.none("bands");
    } else {
      json.row("bands", () -> BandColumn.ALL.forEach(column -> column.writeItems(json, band)));
    }
    VerdictWords.sure(bands, index, measures)
        .ifPresentOrElse(
            words -> json.whole("second", phrases.of(words)), () -> json.none("second"));
    List<String> sure =
        cause instanceof CauseOutcome.Split parts && split.isPresent()
            ? SureWords.of(caseFile, parts, split.get(), measures)
            : List.of();
    json.rowOf("sure", sure, words -> json.item(phrases.of(words)));
    json.rowOf(
        "apart",
        reference.map(r -> ApartWords.of(bands, index, r)).orElse(List.of()),
        words -> json.item(phrases.of(words)));
    json.rowOf("alike", alike(index), json::item);
  }

  /** Places among the columns of what cannot be told from the reference. */
  private List<Integer> alike(int index) {
    return IntStream.range(0, BandColumn.ALL.size())
        .filter(
            i ->
                reference
                    .filter(
                        r -> ApartWords.isAlike(bands, index, r, BandColumn.ALL.get(i).quantity()))
                    .isPresent())
        .boxed()
        .toList();
  }

  private void speed(String name, Optional<Spread> spread) {
    String key = name + BandColumn.BAND;
    spread.ifPresentOrElse(
        s ->
            json.numbers(
                key, new double[] {Shown.kmh(s.low()), Shown.kmh(s.high())}, SPEED_DECIMALS),
        () -> json.none(key));
  }
}
