package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import trimwright.exchange.picture.SideScene;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** One speed of the Bench's answer: numbers, words, split and forces. */
final class BenchPoints {
  private static final int SPEED_DECIMALS = 4;

  /** Of a place [m] and of a force [N]: finer than a pixel of any screen. */
  private static final int PLACE_DECIMALS = 4;

  private static final int FORCE_DECIMALS = 1;

  /** Of the split's values, which are rounded as they are read already. */
  private static final int SPLIT_DECIMALS = 3;

  private final JsonStream json;
  private final CaseFile caseFile;
  private final Curve curve;
  private final Measures measures;
  private final SideScene scene;

  BenchPoints(JsonStream json, CaseFile caseFile, Curve curve, Measures measures, SideScene scene) {
    this.json = json;
    this.caseFile = caseFile;
    this.curve = curve;
    this.measures = measures;
    this.scene = scene;
  }

  void write(TrimOutcome outcome, CauseOutcome cause) {
    Optional<TrimPoint> point = outcome.findPoint();
    json.number("speed_kmh", Shown.kmh(outcome.speed()), SPEED_DECIMALS)
        .text("outcome", Codes.of(outcome));
    point.ifPresentOrElse(this::numbers, this::noNumbers);
    reason(outcome);
    words(outcome, cause);
    split(cause);
    json.list("forces", point.map(scene::forces).orElse(List.of()), this::force);
  }

  private void numbers(TrimPoint point) {
    PointColumn.ALL.forEach(column -> column.write(json, point));
    json.object(CurveWriter.TERMS, () -> PointColumn.writeTerms(json, point.momentTerms()))
        .texts(CurveWriter.LIMITS, Codes.of(point.brokenLimits()));
    PointColumn.MASS_CENTRE.write(json, point);
  }

  private void noNumbers() {
    PointColumn.ALL.forEach(column -> json.none(column.name()));
    json.none(CurveWriter.TERMS).none(CurveWriter.LIMITS).none(PointColumn.MASS_CENTRE.name());
  }

  private void reason(TrimOutcome outcome) {
    if (!(outcome instanceof TrimOutcome.NoTrim none)) {
      json.none("reason").none(CurveWriter.NEED);
      return;
    }
    json.text("reason", ReasonWords.of(none, measures));
    none.wouldNeed()
        .ifPresentOrElse(
            p ->
                json.object(
                    CurveWriter.NEED,
                    () -> PointColumn.WOULD_NEED.forEach(column -> column.write(json, p))),
            () -> json.none(CurveWriter.NEED));
  }

  private void words(TrimOutcome outcome, CauseOutcome cause) {
    CauseWords words = CauseWords.of(caseFile, cause, measures);
    VerdictWords verdict = VerdictWords.of(caseFile, curve, outcome, words, measures);
    json.text("tone", tone(outcome))
        .texts("verdict", List.of(verdict.first(), verdict.second()))
        .object(
            "cause",
            () -> json.text("headline", words.why()).texts("sentences", words.sentences()));
  }

  private static String tone(TrimOutcome outcome) {
    return outcome
        .findPoint()
        .map(point -> point.brokenLimits().isEmpty() ? "good" : "warn")
        .orElse("bad");
  }

  private void split(CauseOutcome cause) {
    if (!(cause instanceof CauseOutcome.Split split)) {
      json.none("split");
      return;
    }
    json.object(
        "split",
        () ->
            json.list(
                "rows",
                SplitRows.of(split, measures),
                row ->
                    json.text("name", row.name())
                        .number("pitch_deg", row.pitch(), SPLIT_DECIMALS)
                        .number("foot_share", row.footShare(), SPLIT_DECIMALS)
                        .number("foot_pressure_mm", row.footPressure(), SPLIT_DECIMALS)
                        .flag("sum", row.sum())));
  }

  private void force(SideScene.Force force) {
    json.text("kind", force.kind())
        .text("name", force.name())
        .text("hue", force.hue())
        .flag("dashed", force.dashed())
        .flag("towards", force.towards())
        .number("x_m", force.x(), PLACE_DECIMALS)
        .number("y_m", force.y(), PLACE_DECIMALS)
        .number("ahead_n", force.ahead(), FORCE_DECIMALS)
        .number("up_n", force.up(), FORCE_DECIMALS)
        .text("shown", force.unit());
  }
}
