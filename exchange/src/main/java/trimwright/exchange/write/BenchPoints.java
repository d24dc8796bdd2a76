package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

  /** All that a point is told in one row. */
  private static final List<PointColumn> NUMBERS =
      Stream.concat(PointColumn.ALL.stream(), Stream.of(PointColumn.MASS_CENTRE)).toList();

  private final JsonStream json;
  private final CaseFile caseFile;
  private final Curve curve;
  private final Measures measures;
  private final SideScene scene;
  private final Numbered<String> phrases = new Numbered<>();
  private final Numbered<SideScene.ForceKind> forceKinds = new Numbered<>();

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
    json.rows("forces", point.map(scene::forces).orElse(List.of()), this::force);
  }

  /** What the points pointed at; after the last of them. */
  void tables() {
    json.texts("point_keys", NUMBERS.stream().map(PointColumn::name).toList())
        .texts("moment_keys", PointColumn.Term.ALL.stream().map(PointColumn.Term::name).toList())
        .texts("phrases", phrases.all())
        .list("force_kinds", forceKinds.all(), this::forceKind);
  }

  private void numbers(TrimPoint point) {
    json.row("numbers", () -> NUMBERS.forEach(column -> column.writeItem(json, point)))
        .row("moments", () -> PointColumn.writeTermItems(json, point.momentTerms()))
        .texts(CurveWriter.LIMITS, Codes.of(point.brokenLimits()));
  }

  private void noNumbers() {
    json.none("numbers").none("moments").none(CurveWriter.LIMITS);
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
        .rowOf("verdict", List.of(verdict.first(), verdict.second()), this::phrase)
        .object(
            "cause",
            () ->
                json.whole("headline", phrases.of(words.why()))
                    .rowOf("sentences", words.sentences(), this::phrase));
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
    json.rows(
        "split",
        SplitRows.of(split, measures),
        row -> {
          phrase(row.name());
          json.item(row.pitch(), SPLIT_DECIMALS)
              .item(row.footShare(), SPLIT_DECIMALS)
              .item(row.footPressure(), SPLIT_DECIMALS)
              .item(row.sum());
        });
  }

  private void phrase(String text) {
    json.item(phrases.of(text));
  }

  private void force(SideScene.Force force) {
    json.item(forceKinds.of(force.kind()))
        .item(force.x(), PLACE_DECIMALS)
        .item(force.y(), PLACE_DECIMALS)
        .item(force.ahead(), FORCE_DECIMALS)
        .item(force.up(), FORCE_DECIMALS);
  }

  private void forceKind(SideScene.ForceKind kind) {
    json.text("kind", kind.code())
        .text("name", kind.name())
        .text("hue", kind.hue())
        .flag("dashed", kind.dashed())
        .flag("towards", kind.towards())
        .text("shown", kind.unit());
  }
}
