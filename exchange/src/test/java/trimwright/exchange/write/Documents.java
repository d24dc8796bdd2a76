package trimwright.exchange.write;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.picture.CurvePicture;
import trimwright.exchange.picture.CurveQuantity;
import trimwright.exchange.picture.PictureStyle;
import trimwright.exchange.picture.PictureTable;
import trimwright.exchange.picture.SideView;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Digest;
import trimwright.exchange.read.FieldProblem;
import trimwright.exchange.read.LimitsFile;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.ChangeAnswer;
import trimwright.kernel.band.Reference;
import trimwright.kernel.band.SharedInputs;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.ThrottleCut;
import trimwright.kernel.play.Play;
import trimwright.kernel.play.PlaySolver;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.water.Water;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.SolidCheck;

/** Every kind of document and text, by name. */
final class Documents {
  /** Half a second's work, once for all tests. */
  private static final Envelope LIMITS =
      Envelope.of(
          CaseSolver.of(Samples.caseFile().rideCase()),
          Envelope.Ratings.NONE,
          Optional.empty(),
          Posture.STANDING);

  private static final PlaySolver PLAYS =
      new PlaySolver(MotionModel.large(CaseSolver.of(Samples.caseFile().rideCase())));

  private static final String ENVELOPE = EnvelopeWriter.json(Samples.caseFile(), LIMITS);

  /** Some seconds' work, once for all tests. */
  private static final List<ChangeAnswer> CHANGES =
      List.of(ChangeSamples.noseUp(), ChangeSamples.shimmed());

  private Documents() {}

  static Map<OutputSchema, List<String>> json() {
    Map<OutputSchema, List<String>> texts = new EnumMap<>(OutputSchema.class);
    texts.put(OutputSchema.CURVE, List.of(curve(Samples.curve()), curve(Samples.emptyCurve())));
    texts.put(
        OutputSchema.CAUSE,
        List.of(
            cause(Samples.caseFile()),
            cause(Samples.measured(5)),
            noSplit(true),
            bothFail(),
            noSplit(false)));
    texts.put(
        OutputSchema.BENCH,
        List.of(
            bench(Samples.measured(5), Samples.curve(), Measures.METRIC),
            bench(unpowered(), Samples.curve(), Measures.IMPERIAL),
            bench(Samples.caseFile(), Samples.emptyCurve(), Measures.METRIC),
            BenchWriter.refused(
                4, List.of(new FieldProblem(List.of("rider.mass_kg"), "no <number>")))));
    texts.put(
        OutputSchema.BENCH_BANDS,
        List.of(
            bands(Samples.measured(5), Samples.curve(), Measures.METRIC),
            bands(Samples.caseFile(), Samples.emptyCurve(), Measures.IMPERIAL),
            BenchBandsWriter.stopped(4)));
    List<TurnPoint> turns = LIMITS.turns().orElseThrow().points();
    texts.put(
        OutputSchema.BENCH_ENVELOPE,
        List.of(
            benchEnvelope(
                Measures.METRIC, turns, turns.stream().findFirst(), OptionalDouble.of(11)),
            benchEnvelope(Measures.IMPERIAL, turns, Optional.empty(), OptionalDouble.empty()),
            benchEnvelope(Measures.METRIC, List.of(), Optional.empty(), OptionalDouble.empty()),
            BenchEnvelopeWriter.stopped(4)));
    texts.put(
        OutputSchema.BENCH_MOTION,
        List.of(
            motion(Play.FOOT_FORWARD, 24 * Samples.KMH, Measures.METRIC),
            motion(Play.CHOP, 24 * Samples.KMH, Measures.IMPERIAL),
            motion(Play.THROTTLE_CUT, 24 * Samples.KMH, Measures.METRIC),
            motion(Play.BREACH, 2 * Samples.KMH, Measures.METRIC),
            BenchMotionWriter.stopped(4)));
    texts.put(
        OutputSchema.SHEET,
        List.of(SheetWriter.json(Samples.caseFile(), 20 * Samples.KMH, "my.pdf")));
    texts.put(
        OutputSchema.SHIM,
        List.of(
            ShimWriter.json(shim(List.of(Mounting.values()), OptionalDouble.empty())),
            ShimWriter.json(
                shim(List.of(Mounting.BELOW), OptionalDouble.of(0.02)).withFile("my.stl"))));
    texts.put(OutputSchema.WATER, List.of(WaterWriter.json(water())));
    texts.put(OutputSchema.SECTION, List.of(SectionWriter.json(section())));
    texts.put(
        OutputSchema.WING,
        List.of(
            WingWriter.json(wing(OptionalDouble.of(0.45))),
            WingWriter.json(wing(OptionalDouble.empty()))));
    texts.put(OutputSchema.CHANGE, CHANGES.stream().map(ChangeWriter::json).toList());
    texts.put(OutputSchema.ENVELOPE, List.of(ENVELOPE));
    texts.put(
        OutputSchema.MOTION,
        List.of(
            MotionWriter.json(Samples.caseFile(), MotionSamples.manners()),
            MotionWriter.json(Samples.caseFile(), List.of())));
    texts.put(
        OutputSchema.FALLS,
        List.of(
            FallWriter.json(Samples.caseFile(), MotionSamples.outside()),
            FallWriter.json(Samples.caseFile(), MotionSamples.inside()),
            FallWriter.json(Samples.caseFile(), MotionSamples.nothing())));
    texts.put(
        OutputSchema.MATCH,
        List.of(MatchWriter.json(MatchSamples.some()), MatchWriter.json(MatchSamples.none())));
    texts.put(
        OutputSchema.FLEET,
        List.of(FleetWriter.json(SharedSamples.fleet()), FleetWriter.json(SharedSamples.nobody())));
    texts.put(OutputSchema.BUDGET, List.of(BudgetWriter.json(SharedSamples.budget())));
    texts.put(OutputSchema.LIMITS, List.of(LimitsWriter.json(LimitsFile.CHOSEN)));
    return texts;
  }

  private static String benchEnvelope(
      Measures measures,
      List<TurnPoint> banks,
      Optional<TurnPoint> breach,
      OptionalDouble fastest) {
    return BenchEnvelopeWriter.accepted(
        3, measures, Samples.caseFile(), LIMITS, banks, breach, fastest);
  }

  private static String motion(Play play, double speed, Measures measures) {
    Optional<MotionTrim> trim = PLAYS.model().findTrim(speed);
    FallDrive drive = new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty());
    return BenchMotionWriter.accepted(
        3,
        measures,
        Samples.caseFile(),
        play,
        speed,
        trim.map(t -> PLAYS.play(play, t, drive)),
        trim.map(t -> ThrottleCut.of(PLAYS.model(), t)),
        play == Play.CHOP ? PLAYS.chop().waves() : List.of());
  }

  static String curve(Curve curve) {
    return CurveWriter.json(Samples.caseFile(), Samples.bands(curve));
  }

  static String bench(CaseFile caseFile, Curve curve, Measures measures) {
    return BenchWriter.accepted(3, measures, caseFile, curve, causes(caseFile, curve));
  }

  static String bands(CaseFile caseFile, Curve curve, Measures measures) {
    List<CauseOutcome> causes = causes(caseFile, curve);
    List<Optional<SplitBands>> splits =
        causes.stream()
            .map(
                cause ->
                    cause instanceof CauseOutcome.Split split
                        ? Optional.of(
                            new SplitBands(
                                Samples.band(split.ridden()), Samples.band(split.wished())))
                        : Optional.<SplitBands>empty())
            .toList();
    return BenchBandsWriter.accepted(
        3,
        measures,
        caseFile,
        Samples.bands(curve),
        causes,
        splits,
        Optional.of(new Reference(Samples.bands(curve), SharedInputs.ALL)));
  }

  private static CaseFile unpowered() {
    return Samples.caseFile(0.75, 0.85, false, 0, OptionalDouble.empty());
  }

  private static List<CauseOutcome> causes(CaseFile caseFile, Curve curve) {
    return curve.outcomes().stream()
        .<CauseOutcome>map(
            outcome ->
                outcome instanceof TrimOutcome.NoTrim none
                    ? new CauseOutcome.NoSplit(
                        Optional.of(none), Optional.empty(), OptionalDouble.of(14 * Samples.KMH))
                    : Samples.split(
                        caseFile, outcome.findPoint().orElseThrow(), Samples.pointAt(25)))
        .toList();
  }

  static String cause(CaseFile caseFile) {
    return CauseWriter.json(
        caseFile, 18 * Samples.KMH, split(caseFile), Optional.of(Samples.splitBands()));
  }

  static CauseOutcome.Split split(CaseFile caseFile) {
    return Samples.split(caseFile, Samples.pointAt(18), Samples.pointAt(25));
  }

  static String noSplit(boolean wished) {
    return CauseWriter.json(
        Samples.caseFile(),
        12 * Samples.KMH,
        Samples.noSplit(12, wished, NoTrimReason.TOO_SLOW),
        Optional.empty());
  }

  static String bothFail() {
    return CauseWriter.json(
        Samples.caseFile(), 12 * Samples.KMH, Samples.bothFail(), Optional.empty());
  }

  static WaterTable water() {
    return new WaterTable(Digest.of("water"), 288.15, 0.035, new Water(1025.97, 1.1892e-6, 1672.9));
  }

  static ShimTable shim(List<Mounting> mountings, OptionalDouble boltLength) {
    ShimWedge wedge = new ShimWedge(0.02, 0.06, 0.0065, 0.0795, 0.0195, 8e-4);
    return new ShimTable(
        Digest.of("shim"),
        -wedge.angle(),
        0.006,
        boltLength,
        mountings,
        wedge,
        SolidCheck.of(wedge.solid()),
        Optional.empty());
  }

  static SectionTable section() {
    return new SectionTable(
            "naca2412",
            Digest.of("section"),
            6e5,
            -0.036,
            6.31,
            OptionalDouble.of(1.35),
            rows(),
            List.of())
        .withRepairs(List.of("The lower surface came first; the order was turned round."));
  }

  static WingTable wing(OptionalDouble immersion) {
    return new WingTable(
        "sample wing",
        Digest.of("wing"),
        SectionCode.LAYERS,
        25 * Samples.KMH,
        immersion,
        0.15,
        0.9,
        -0.031,
        4.4,
        -0.21,
        1.03,
        immersion.isPresent() ? OptionalDouble.of(1.2) : OptionalDouble.empty(),
        rows());
  }

  private static List<PolarRow> rows() {
    return List.of(
        new PolarRow(-0.07, -0.2, 0.011, -0.05, -0.9, true),
        new PolarRow(0.0, 0.21, 0.0089, -0.05, -0.7, true),
        new PolarRow(0.35, Double.NaN, Double.POSITIVE_INFINITY, -0.1, -6, false));
  }

  /** All texts of all writers and pictures, for comparing one run with another. */
  static Map<String, String> everything() {
    Map<String, String> all = new LinkedHashMap<>();
    json().forEach((schema, texts) -> all.put(schema.name(), String.join("", texts)));
    CaseFile measured = Samples.measured(5);
    all.put("curve csv", CurveWriter.csv(Samples.bands(Samples.curve())));
    all.put("curve table", CurveWriter.table(Samples.caseFile(), Samples.bands(Samples.curve())));
    all.put(
        "cause table",
        CauseWriter.table(measured, split(measured), Optional.of(Samples.splitBands())));
    all.put("change table", ChangeWriter.table(CHANGES.get(0)));
    all.put("water csv", WaterWriter.csv(water()));
    all.put("water table", WaterWriter.table(water()));
    all.put(
        "shim table",
        ShimWriter.table(
            shim(List.of(Mounting.values()), OptionalDouble.of(0.02)).withFile("my.stl")));
    all.put("section csv", SectionWriter.csv(section()));
    all.put("section table", SectionWriter.table(section()));
    all.put("wing csv", WingWriter.csv(wing(OptionalDouble.of(0.45))));
    all.put("wing table", WingWriter.table(wing(OptionalDouble.of(0.45))));
    PictureStyle style = PictureStyle.page(820, 300);
    all.put(
        "side view", SideView.svg(Samples.caseFile(), Samples.pointAt(20), Measures.METRIC, style));
    all.put("no trim", SideView.withoutTrim(Samples.caseFile(), Measures.METRIC, style));
    for (CurveQuantity quantity : CurveQuantity.values()) {
      all.put(
          quantity.name(),
          CurvePicture.svg(
              Samples.caseFile(),
              Samples.bands(Samples.curve()),
              quantity,
              20 * Samples.KMH,
              Measures.METRIC,
              style));
    }
    all.put(
        "picture table", PictureTable.curve(Samples.caseFile(), Samples.curve(), Measures.METRIC));
    all.put(
        "side table",
        PictureTable.sideView(Samples.caseFile(), Samples.pointAt(20), Measures.METRIC));
    return all;
  }

  static Optional<String> firstDifference(Map<String, String> a, Map<String, String> b) {
    return a.keySet().stream().filter(key -> !a.get(key).equals(b.get(key))).findFirst();
  }
}
