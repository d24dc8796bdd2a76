package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.VerdictWords;
import trimwright.exchange.words.WaveWords;
import trimwright.kernel.trim.Curve;
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

  private CurveWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param curve its curve
   * @return text that satisfies {@code curve.schema.json}
   */
  public static String json(CaseFile caseFile, Curve curve) {
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    JsonFields fields = document.fields().text("name", caseFile.name());
    fields.list("points", curve.outcomes(), CurveWriter::point);
    fields.list(
        "even_feet_speeds",
        curve.evenFeetSpeeds(),
        (item, even) ->
            item.number("speed_kmh", Shown.kmh(even.speed()))
                .text("direction", even.rising() ? "rising" : "falling"));
    fields.number("level_speed_kmh", kmh(curve.levelSpeed()));
    fields.list(
        "rideable_intervals",
        curve.rideableIntervals(),
        (item, i) ->
            item.number("from_kmh", Shown.kmh(i.from())).number("to_kmh", Shown.kmh(i.to())));
    Optional<SpeedInterval> window = curve.rideableWindow();
    fields.number("rideable_from_kmh", kmh(end(window, true)));
    fields.number("rideable_to_kmh", kmh(end(window, false)));
    fields.number("waves_left_out_below_kmh", Shown.kmh(WaveWords.speed(caseFile)));
    return document.text();
  }

  private static void point(JsonFields fields, TrimOutcome outcome) {
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
   * @param curve the curve
   * @return the text
   */
  public static String csv(Curve curve) {
    List<String> head = new ArrayList<>(List.of("speed_kmh", "outcome"));
    PointColumn.ALL.forEach(column -> head.add(column.name()));
    PointColumn.Term.ALL.forEach(term -> head.add(TERMS + "." + term.name()));
    head.addAll(List.of(LIMITS, PointColumn.MASS_CENTRE.name(), "reason"));
    PointColumn.WOULD_NEED.forEach(column -> head.add(NEED + "." + column.name()));
    return Csv.text(head, curve.outcomes().stream().map(CurveWriter::csvRow).toList());
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
   * @param curve its curve
   * @return the text
   */
  public static String table(CaseFile caseFile, Curve curve) {
    TextTable table =
        new TextTable()
            .number("speed", "km/h")
            .number("pitch", "deg")
            .number("front", "%")
            .number("front", "kg")
            .number("back", "kg")
            .number("thrust", "N")
            .number("power", "W")
            .number("to stall", "deg")
            .words("outcome");
    curve.outcomes().forEach(outcome -> table.row(tableRow(outcome)));
    boolean waves = curve.outcomes().stream().anyMatch(o -> o.speed() < WaveWords.speed(caseFile));
    return caseFile.name()
        + "\n\n"
        + table.text()
        + "\n"
        + VerdictWords.speeds(curve, Measures.METRIC)
        + "\n"
        + (waves ? WaveWords.of(caseFile, Measures.METRIC) + "\n" : "")
        + "Pitch is nose-up positive; front is the front foot's share of the load.\n";
  }

  private static List<String> tableRow(TrimOutcome outcome) {
    List<String> row = new ArrayList<>();
    row.add(Shown.decimals(Shown.kmh(outcome.speed()), 1));
    if (outcome instanceof TrimOutcome.Trimmed trimmed) {
      TrimPoint p = trimmed.point();
      row.add(Shown.decimals(Shown.degrees(p.pitch()), 1));
      row.add(Shown.decimals(p.footShare() * 100, 0));
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
      row.addAll(List.of("-", "-", "-", "-", "-", "-", "-"));
      row.add(ReasonWords.brief(none, Measures.METRIC));
    }
    return row;
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
