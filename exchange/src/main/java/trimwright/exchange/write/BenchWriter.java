package trimwright.exchange.write;

import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.picture.SideScene;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.FieldProblem;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimOutcome;

/**
 * The answer to one move of a slider: the whole curve with numbers, words and geometry for every
 * speed, so that moving along the curve asks for nothing more.
 */
public final class BenchWriter {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private BenchWriter() {}

  /**
   * The answer for a case.
   *
   * @param sequence number of the question, handed back
   * @param measures what the words speak in
   * @param caseFile the case
   * @param curve its curve
   * @param causes the cause split at each of the curve's speeds, in its order
   * @return JSON on one line
   */
  public static String accepted(
      long sequence, Measures measures, CaseFile caseFile, Curve curve, List<CauseOutcome> causes) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("sequence", sequence);
    JsonFields fields =
        new JsonFields(root)
            .flag("accepted", true)
            .text("name", caseFile.name())
            .text("case_digest", caseFile.digest())
            .text("measures", Codes.of(measures));
    SideScene scene = SideScene.of(caseFile.rideCase());
    List<Integer> indices = IntStream.range(0, causes.size()).boxed().toList();
    fields.list(
        "points",
        indices,
        (item, i) -> {
          point(item, curve.outcomes().get(i), causes.get(i), scene, measures);
          words(item, caseFile, curve, curve.outcomes().get(i), causes.get(i), measures);
        });
    CurveWriter.speeds(fields, caseFile, curve);
    Rider rider = caseFile.rideCase().rider();
    fields
        .number("wished_speed_kmh", Shown.kmh(rider.wishedSpeed()))
        .number("wished_foot_share", rider.wishedFootShare())
        .number("wished_pitch_deg", Shown.degrees(rider.wishedPitch()));
    geometry(fields, caseFile, scene);
    Setup setup = caseFile.rideCase().setup();
    ShimWords shim = ShimWords.of(setup.shim(), caseFile.notes().stabilizerMounting());
    fields.texts("shim", shim.sentences());
    fields.list(
        "rule_out",
        RuleOut.listFor(caseFile),
        (item, r) -> item.text("title", r.what()).text("text", r.how()));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * The answer where the fields make no case.
   *
   * @param sequence number of the question, handed back
   * @param problems what is wrong
   * @return JSON on one line
   */
  public static String refused(long sequence, List<FieldProblem> problems) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("sequence", sequence);
    new JsonFields(root)
        .flag("accepted", false)
        .list(
            "problems",
            problems,
            (item, p) -> item.texts("paths", p.paths()).text("message", p.message()));
    return MAPPER.writeValueAsString(root);
  }

  private static void point(
      JsonFields fields,
      TrimOutcome outcome,
      CauseOutcome cause,
      SideScene scene,
      Measures measures) {
    CurveWriter.point(fields, outcome);
    if (cause instanceof CauseOutcome.Split split) {
      fields
          .object("split")
          .list(
              "rows",
              SplitRows.of(split, measures),
              (item, row) ->
                  item.text("name", row.name())
                      .number("pitch_deg", row.pitch())
                      .number("foot_share", row.footShare())
                      .number("foot_pressure_mm", row.footPressure())
                      .flag("sum", row.sum()));
    } else {
      fields.none("split");
    }
    fields.list(
        "forces", outcome.findPoint().map(scene::forces).orElse(List.of()), BenchWriter::force);
  }

  private static void words(
      JsonFields fields,
      CaseFile caseFile,
      Curve curve,
      TrimOutcome outcome,
      CauseOutcome cause,
      Measures measures) {
    VerdictWords verdict = VerdictWords.of(caseFile, curve, outcome, measures);
    CauseWords words = CauseWords.of(caseFile, cause, measures);
    fields.text("tone", tone(outcome)).texts("verdict", List.of(verdict.first(), verdict.second()));
    fields.object("cause").text("headline", words.headline()).texts("sentences", words.sentences());
  }

  private static String tone(TrimOutcome outcome) {
    return outcome
        .findPoint()
        .map(point -> point.brokenLimits().isEmpty() ? "good" : "warn")
        .orElse("bad");
  }

  private static void force(JsonFields fields, SideScene.Force force) {
    fields
        .text("kind", force.kind())
        .text("name", force.name())
        .text("hue", force.hue())
        .flag("dashed", force.dashed())
        .flag("towards", force.towards())
        .number("x_m", force.x())
        .number("y_m", force.y())
        .number("ahead_n", force.ahead())
        .number("up_n", force.up())
        .text("shown", force.unit());
  }

  private static void geometry(JsonFields fields, CaseFile caseFile, SideScene scene) {
    JsonFields craft = fields.object("craft");
    craft.list(
        "shapes",
        scene.outlines(),
        (item, shape) -> item.text("kind", shape.kind()).numbers("points", shape.points()));
    craft
        .numbers("front_wing_root", scene.frontWingRoot())
        .number("immersion_m", caseFile.rideCase().immersion())
        .numbers("front_foot", scene.frontFoot())
        .numbers("back_foot", scene.backFoot())
        .numbers("deck", scene.deck());
    Setup setup = caseFile.rideCase().setup();
    fields
        .object("planforms")
        .numbers("front_wing", SideScene.planform(setup.frontWing().shape()))
        .numbers("stabilizer", SideScene.planform(setup.stabilizer().shape()))
        .numbers("board", scene.boardPlanform());
  }
}
