package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.InputWords;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.SureWords;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Spread;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** A curve as JSON, CSV and as a table. */
public final class CurveWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-curve/1";

  static final String TERMS = "moment_terms_nm";
  static final String LIMITS = "limits";
  static final String NEED = "would_need";

  private static final String PARTS = "band_parts";

  /** Inputs named as making a band. */
  private static final int MOST_PARTS = 4;

  private CurveWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param bands its curve with the bands, null where there are none
   * @return text that satisfies {@code curve.schema.json}
   */
  public static String json(CaseFile caseFile, Bands bands) {
    Curve curve = bands.curve();
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    JsonFields fields = document.fields().text("name", caseFile.name());
    fields.text("sections", SectionCode.of(caseFile));
    fields.list(
        "points",
        numbers(curve.outcomes()),
        (item, i) -> point(item, curve.outcomes().get(i), bands.points().get(i)));
    fields.list(
        "even_feet_speeds",
        numbers(curve.evenFeetSpeeds()),
        (item, i) -> {
          EvenFeetSpeed even = curve.evenFeetSpeeds().get(i);
          item.number("speed_kmh", Shown.kmh(even.speed()))
              .text("direction", even.rising() ? "rising" : "falling");
          speedBand(item, "speed_kmh", bands.evenFeetSpeeds().get(i));
        });
    fields.number("level_speed_kmh", kmh(curve.levelSpeed()));
    speedBand(fields, "level_speed_kmh", bands.levelSpeed());
    fields.list(
        "rideable_intervals",
        curve.rideableIntervals(),
        (item, i) ->
            item.number("from_kmh", Shown.kmh(i.from())).number("to_kmh", Shown.kmh(i.to())));
    Optional<SpeedInterval> window = curve.rideableWindow();
    fields.number("rideable_from_kmh", kmh(end(window, true)));
    fields.number("rideable_to_kmh", kmh(end(window, false)));
    speedBand(fields, "rideable_from_kmh", bands.rideableFrom());
    speedBand(fields, "rideable_to_kmh", bands.rideableTo());
    return document.text();
  }

  private static List<Integer> numbers(List<?> items) {
    return IntStream.range(0, items.size()).boxed().toList();
  }

  private static void speedBand(JsonFields fields, String name, Optional<Spread> spread) {
    BandColumn.write(fields, name + BandColumn.BAND, spread, Shown::kmh);
  }

  private static void point(JsonFields fields, TrimOutcome outcome, Optional<PointBand> band) {
    fields.number("speed_kmh", Shown.kmh(outcome.speed())).text("outcome", Codes.of(outcome));
    writePoint(fields, outcome.findPoint());
    if (outcome instanceof TrimOutcome.NoTrim none) {
      fields.text("reason", ReasonWords.of(none, Measures.METRIC));
      none.wouldNeed()
          .ifPresentOrElse(
              p -> {
                JsonFields need = fields.object(NEED);
                PointColumn.WOULD_NEED.forEach(column -> column.write(need, p));
              },
              () -> fields.none(NEED));
    } else {
      fields.none("reason").none(NEED);
    }
    BandColumn.ALL.forEach(column -> column.write(fields, band));
    parts(fields, band);
  }

  /** What makes the bands of pitch, foot share and electric power, the largest first. */
  private static void parts(JsonFields fields, Optional<PointBand> band) {
    if (band.isEmpty()) {
      fields.none(PARTS);
      return;
    }
    JsonFields parts = fields.object(PARTS);
    for (BandColumn column : BandColumn.EXPLAINED) {
      parts.list(
          column.name(),
          column.find(band).map(Spread::parts).orElse(List.of()).stream()
              .limit(MOST_PARTS)
              .toList(),
          (item, part) ->
              item.text("input", Codes.of(part.input()))
                  .text("words", InputWords.of(part.input()))
                  .number("variance_share", part.share()));
    }
  }

  private static void writePoint(JsonFields fields, Optional<TrimPoint> found) {
    if (found.isEmpty()) {
      PointColumn.ALL.forEach(column -> fields.none(column.name()));
      fields.none(TERMS).none(LIMITS).none(PointColumn.MASS_CENTRE.name());
      return;
    }
    TrimPoint point = found.get();
    PointColumn.ALL.forEach(column -> column.write(fields, point));
    PointColumn.writeTerms(fields.object(TERMS), point.momentTerms());
    fields.texts(LIMITS, Codes.of(point.brokenLimits()));
    PointColumn.MASS_CENTRE.write(fields, point);
  }

  /**
   * The points as CSV, one row each, under the names of the JSON document; names inside an object
   * follow its name and a point.
   *
   * @param bands the curve with its bands
   * @return the text
   */
  public static String csv(Bands bands) {
    List<String> head = new ArrayList<>(List.of("speed_kmh", "outcome"));
    PointColumn.ALL.forEach(column -> head.add(column.name()));
    PointColumn.Term.ALL.forEach(term -> head.add(TERMS + "." + term.name()));
    head.addAll(List.of(LIMITS, PointColumn.MASS_CENTRE.name(), "reason"));
    PointColumn.WOULD_NEED.forEach(column -> head.add(NEED + "." + column.name()));
    for (BandColumn column : BandColumn.ALL) {
      head.add(column.name() + BandColumn.BAND + ".low");
      head.add(column.name() + BandColumn.BAND + ".high");
    }
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < bands.points().size(); i++) {
      List<String> row = csvRow(bands.curve().outcomes().get(i));
      Optional<PointBand> band = bands.points().get(i);
      BandColumn.ALL.forEach(column -> row.addAll(column.cells(band)));
      rows.add(row);
    }
    return Csv.text(head, rows);
  }

  private static List<String> csvRow(TrimOutcome outcome) {
    List<String> row = new ArrayList<>();
    row.add(Csv.cell(Shown.kmh(outcome.speed())));
    row.add(Codes.of(outcome));
    Optional<TrimPoint> point = outcome.findPoint();
    PointColumn.ALL.forEach(column -> row.add(csvCell(column, point)));
    PointColumn.Term.ALL.forEach(
        term ->
            row.add(
                point
                    .map(p -> Csv.exactCell(term.value().applyAsDouble(p.momentTerms())))
                    .orElse(null)));
    row.add(point.map(p -> String.join(" ", Codes.of(p.brokenLimits()))).orElse(null));
    row.add(csvCell(PointColumn.MASS_CENTRE, point));
    row.add(
        outcome instanceof TrimOutcome.NoTrim none ? ReasonWords.of(none, Measures.METRIC) : null);
    Optional<TrimPoint> need =
        outcome instanceof TrimOutcome.NoTrim none ? none.wouldNeed() : Optional.empty();
    PointColumn.WOULD_NEED.forEach(column -> row.add(csvCell(column, need)));
    return row;
  }

  private static String csvCell(PointColumn column, Optional<TrimPoint> point) {
    OptionalDouble value = point.map(p -> column.value().apply(p)).orElseGet(OptionalDouble::empty);
    return value.isPresent() && column.exact()
        ? Csv.exactCell(value.getAsDouble())
        : Csv.cell(value);
  }

  /**
   * The curve as a table for a terminal, the speeds that matter below it.
   *
   * @param caseFile the case
   * @param bands its curve with the bands
   * @return the text
   */
  public static String table(CaseFile caseFile, Bands bands) {
    Curve curve = bands.curve();
    TextTable table =
        new TextTable()
            .number("speed", "km/h")
            .number("pitch", "deg")
            .number("±", "deg")
            .number("front", "%")
            .number("±", "%")
            .number("front", "kg")
            .number("back", "kg")
            .number("thrust", "N")
            .number("power", "W")
            .number("to stall", "deg")
            .words("outcome");
    for (int i = 0; i < bands.points().size(); i++) {
      table.row(tableRow(curve.outcomes().get(i), bands.points().get(i)));
    }
    return caseFile.name()
        + "\n\n"
        + table.text()
        + "\n"
        + VerdictWords.speeds(bands, Measures.METRIC)
        + "\n"
        + SureWords.next(caseFile, bands).map(words -> words + "\n").orElse("")
        + "Pitch is nose-up positive; front is the front foot's share of the load; ± is how far off"
        + " 95 of 100\nsuch setups would be at most, as their parts are known.\n";
  }

  private static List<String> tableRow(TrimOutcome outcome, Optional<PointBand> band) {
    List<String> row = new ArrayList<>();
    row.add(Shown.decimals(Shown.kmh(outcome.speed()), 1));
    if (outcome instanceof TrimOutcome.Trimmed trimmed) {
      TrimPoint p = trimmed.point();
      row.add(Shown.decimals(Shown.degrees(p.pitch()), 1));
      row.add(reach(band, Quantity.PITCH, Shown.degrees(1), 1));
      row.add(Shown.decimals(p.footShare() * 100, 0));
      row.add(reach(band, Quantity.FOOT_SHARE, 100, 0));
      row.add(Shown.decimals(p.frontLeg(), 0));
      row.add(Shown.decimals(p.backLeg(), 0));
      row.add(Shown.decimals(p.thrust(), 0));
      row.add(p.electricPower().isPresent() ? whole(p.electricPower().getAsDouble()) : "-");
      row.add(Shown.decimals(Shown.degrees(p.stallMargin()), 1));
      row.add(
          p.brokenLimits().isEmpty()
              ? "rideable"
              : p.brokenLimits().stream()
                  .sorted()
                  .map(ReasonWords::brief)
                  .collect(Collectors.joining(", ")));
    } else if (outcome instanceof TrimOutcome.NoTrim none) {
      row.addAll(Collections.nCopies(9, "-"));
      row.add(ReasonWords.brief(none, Measures.METRIC));
    }
    return row;
  }

  private static String reach(
      Optional<PointBand> band, Quantity quantity, double unit, int decimals) {
    return band.flatMap(b -> b.find(quantity))
        .map(spread -> Shown.decimals(unit * spread.reach(), decimals))
        .orElse("-");
  }

  private static String whole(double value) {
    return Shown.decimals(value, 0);
  }

  static OptionalDouble end(Optional<SpeedInterval> window, boolean from) {
    return window.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(from ? window.get().from() : window.get().to());
  }

  static OptionalDouble kmh(OptionalDouble speed) {
    return speed.isPresent()
        ? OptionalDouble.of(Shown.kmh(speed.getAsDouble()))
        : OptionalDouble.empty();
  }
}
