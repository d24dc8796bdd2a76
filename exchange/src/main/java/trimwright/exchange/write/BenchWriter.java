package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trimwright.exchange.picture.SideScene;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.FieldProblem;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.SpeedInterval;

/**
 * The answer to one move of a slider: the whole curve with numbers, words and geometry for every
 * speed, so that moving along the curve asks for nothing more. Written straight to text, each
 * number with as many decimals as a page can use.
 */
public final class BenchWriter {
  /** Decimals of a speed [km/h] and of a place [m]: hundredths of a metre per hour and of a mm. */
  private static final int SPEED_DECIMALS = 4;

  private static final int PLACE_DECIMALS = 5;

  /** Decimals of an outline's places [m]: a tenth of a millimetre. */
  private static final int OUTLINE_DECIMALS = 4;

  private BenchWriter() {}

  /**
   * The answer for a case.
   *
   * @param sequence number of the question, handed back
   * @param measures what the words speak in
   * @param caseFile the case
   * @param curve its curve
   * @param causes the cause split at each of the curve's speeds, in its order
   * @return JSON on one line that satisfies {@code bench.schema.json}
   * @throws IllegalArgumentException if there is not one cause for each of the curve's speeds
   */
  public static String accepted(
      long sequence, Measures measures, CaseFile caseFile, Curve curve, List<CauseOutcome> causes) {
    if (causes.size() != curve.outcomes().size()) {
      throw new IllegalArgumentException(
          "there must be a cause for each of "
              + curve.outcomes().size()
              + " speeds, were "
              + causes.size());
    }
    SideScene scene = SideScene.of(caseFile.rideCase());
    return JsonStream.text(
        json -> {
          json.whole("sequence", sequence)
              .flag("accepted", true)
              .text("name", caseFile.name())
              .text("sections", SectionCode.of(caseFile))
              .text("case_digest", caseFile.digest())
              .text("measures", Codes.of(measures));
          BenchPoints points = new BenchPoints(json, caseFile, curve, measures, scene);
          json.list(
              "points",
              () -> IntStream.range(0, causes.size()).iterator(),
              i -> points.write(curve.outcomes().get(i), causes.get(i)));
          points.tables();
          speeds(json, caseFile, curve);
          geometry(json, caseFile, scene);
          words(json, caseFile);
        });
  }

  /**
   * The answer where the fields make no case.
   *
   * @param sequence number of the question, handed back
   * @param problems what is wrong
   * @return JSON on one line that satisfies {@code bench.schema.json}
   */
  public static String refused(long sequence, List<FieldProblem> problems) {
    return JsonStream.text(
        json ->
            json.whole("sequence", sequence)
                .flag("accepted", false)
                .list(
                    "problems",
                    problems,
                    p -> json.texts("paths", p.paths()).text("message", p.message())));
  }

  private static void speeds(JsonStream json, CaseFile caseFile, Curve curve) {
    json.list(
        "even_feet_speeds",
        curve.evenFeetSpeeds(),
        even ->
            json.number("speed_kmh", Shown.kmh(even.speed()), SPEED_DECIMALS)
                .text("direction", even.rising() ? "rising" : "falling"));
    json.number("level_speed_kmh", CurveWriter.kmh(curve.levelSpeed()), SPEED_DECIMALS);
    json.list(
        "rideable_intervals",
        curve.rideableIntervals(),
        i ->
            json.number("from_kmh", Shown.kmh(i.from()), SPEED_DECIMALS)
                .number("to_kmh", Shown.kmh(i.to()), SPEED_DECIMALS));
    Optional<SpeedInterval> window = curve.rideableWindow();
    Rider rider = caseFile.rideCase().rider();
    json.number("rideable_from_kmh", CurveWriter.kmh(CurveWriter.end(window, true)), SPEED_DECIMALS)
        .number("rideable_to_kmh", CurveWriter.kmh(CurveWriter.end(window, false)), SPEED_DECIMALS)
        .number("wished_speed_kmh", Shown.kmh(rider.wishedSpeed()), SPEED_DECIMALS)
        .number("wished_foot_share", rider.wishedFootShare(), SPEED_DECIMALS)
        .number("wished_pitch_deg", Shown.degrees(rider.wishedPitch()), SPEED_DECIMALS);
  }

  private static void geometry(JsonStream json, CaseFile caseFile, SideScene scene) {
    json.object(
        "craft",
        () ->
            json.list(
                    "shapes",
                    scene.outlines(),
                    shape ->
                        json.text("kind", shape.kind())
                            .numbers("points", shape.points(), OUTLINE_DECIMALS))
                .numbers("front_wing_root", scene.frontWingRoot(), PLACE_DECIMALS)
                .number("immersion_m", caseFile.rideCase().immersion(), PLACE_DECIMALS)
                .numbers("front_foot", scene.frontFoot(), PLACE_DECIMALS)
                .numbers("back_foot", scene.backFoot(), PLACE_DECIMALS)
                .numbers("deck", scene.deck(), PLACE_DECIMALS));
    Setup setup = caseFile.rideCase().setup();
    json.object(
        "planforms",
        () ->
            json.numbers(
                    "front_wing", SideScene.planform(setup.frontWing().shape()), OUTLINE_DECIMALS)
                .numbers(
                    "stabilizer", SideScene.planform(setup.stabilizer().shape()), OUTLINE_DECIMALS)
                .numbers("board", scene.boardPlanform(), OUTLINE_DECIMALS));
  }

  private static void words(JsonStream json, CaseFile caseFile) {
    ShimWords shim =
        ShimWords.of(caseFile.rideCase().setup().shim(), caseFile.notes().stabilizerMounting());
    json.texts("shim", shim.sentences())
        .list(
            "rule_out",
            RuleOut.listFor(caseFile),
            r -> json.text("title", r.what()).text("text", r.how()));
  }
}
