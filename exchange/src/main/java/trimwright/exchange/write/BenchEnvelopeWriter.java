package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.EnvelopeNote;
import trimwright.exchange.words.EnvelopeWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Station;
import trimwright.kernel.turn.TurnPoint;

/** The envelope of a case as the Bench draws it: marks on its speed axis, turns, and sentences. */
public final class BenchEnvelopeWriter {
  private static final int SPEED_DECIMALS = 2;
  private static final int ANGLE_DECIMALS = 2;
  private static final double SAME_BANK = 1e-6;

  /** Half of the last digit that is written [°]. */
  private static final double ANGLE_ROUNDING = 0.005;

  private BenchEnvelopeWriter() {}

  /**
   * The answer for a case.
   *
   * @param sequence number of the question, handed back
   * @param measures what the words speak in
   * @param caseFile the case
   * @param envelope its limits
   * @param banks turns of the wished speed with growing bank, whether or not inside the limits
   * @param breach the turn in which a tip comes out, where there is one
   * @param fastest highest speed that the drive pushes [m/s]
   * @return JSON on one line that satisfies {@code bench_envelope.schema.json}
   */
  public static String accepted(
      long sequence,
      Measures measures,
      CaseFile caseFile,
      Envelope envelope,
      List<TurnPoint> banks,
      Optional<TurnPoint> breach,
      OptionalDouble fastest) {
    return JsonStream.text(
        json -> {
          json.whole("sequence", sequence)
              .flag("accepted", true)
              .text("case_digest", caseFile.digest())
              .text("measures", Codes.of(measures))
              .number("wished_speed_kmh", Shown.kmh(envelope.speed()), SPEED_DECIMALS)
              .list(
                  "marks",
                  SpeedMark.listFor(envelope, fastest),
                  mark ->
                      json.text("id", mark.id())
                          .text("label", mark.label())
                          .text("name", mark.name())
                          .number("speed_kmh", Shown.kmh(mark.speed()), SPEED_DECIMALS));
          turns(json, caseFile.rideCase(), envelope, banks, breach);
          json.list(
              "notes",
              EnvelopeNote.listFor(caseFile, envelope, measures),
              note ->
                  json.text("title", note.title())
                      .texts("sentences", note.sentences())
                      .text("basis", note.basis()));
        });
  }

  /**
   * The answer to a question that was given up because somebody moved a slider.
   *
   * @param sequence number of the question, handed back
   * @return JSON on one line that satisfies {@code bench_envelope.schema.json}
   */
  public static String stopped(long sequence) {
    return JsonStream.text(
        json -> json.whole("sequence", sequence).flag("accepted", false).flag("stopped", true));
  }

  private static void turns(
      JsonStream json,
      RideCase rideCase,
      Envelope envelope,
      List<TurnPoint> banks,
      Optional<TurnPoint> breach) {
    if (banks.isEmpty()) {
      json.none("turns");
      return;
    }
    OptionalDouble most =
        envelope
            .turns()
            .flatMap(t -> t.tightest())
            .map(t -> OptionalDouble.of(Shown.degrees(t.bank())))
            .orElse(OptionalDouble.empty());
    double inside = most.orElse(0);
    json.object(
        "turns",
        () -> {
          json.number("most_bank_deg", most, ANGLE_DECIMALS);
          json.text("ended_by", envelope.turns().map(t -> Codes.of(t.limit())).orElse("no_circle"));
          json.text("end", envelope.turns().map(t -> EnvelopeWords.because(t.limit())).orElse(""));
          json.number(
              "breach_bank_deg",
              breach.isPresent()
                  ? OptionalDouble.of(Shown.degrees(breach.get().bank()))
                  : OptionalDouble.empty(),
              ANGLE_DECIMALS);
          json.number("chop_mm", Shown.mm(rideCase.chopHeight()), 0);
          json.object("craft", () -> craft(json, rideCase.setup()));
          json.list("banks", banks(banks, envelope, breach), t -> turn(json, t, inside));
        });
  }

  /** Those of the steps with the tightest inside the limits and the breach in their places. */
  private static List<TurnPoint> banks(
      List<TurnPoint> steps, Envelope envelope, Optional<TurnPoint> breach) {
    List<TurnPoint> all = new ArrayList<>(steps);
    envelope.turns().flatMap(t -> t.tightest()).ifPresent(t -> insert(all, t));
    breach.ifPresent(t -> insert(all, t));
    return all;
  }

  private static void insert(List<TurnPoint> all, TurnPoint turn) {
    if (all.stream().noneMatch(t -> Math.abs(t.bank() - turn.bank()) < SAME_BANK)) {
      all.add(turn);
      all.sort(Comparator.comparingDouble(TurnPoint::bank));
    }
  }

  private static void craft(JsonStream json, Setup setup) {
    List<Station> stations = setup.frontWing().shape().stations();
    double half = 0.5 * setup.frontWing().shape().span();
    json.number("mast_mm", Shown.mm(setup.mast().length()), 0)
        .number("board_width_mm", Shown.mm(setup.board().width()), 0)
        .number("board_thickness_mm", Shown.mm(setup.board().thickness()), 0)
        .numbers(
            "wing_out_mm",
            stations.stream().mapToDouble(s -> Shown.mm(half * s.fraction())).toArray(),
            0)
        .numbers(
            "wing_up_mm",
            stations.stream()
                .mapToDouble(s -> Shown.mm(setup.frontWing().height() + s.above()))
                .toArray(),
            0);
  }

  private static void turn(JsonStream json, TurnPoint turn, double inside) {
    double bank = Shown.degrees(turn.bank());
    json.number("bank_deg", bank, ANGLE_DECIMALS)
        .number(
            "radius_m",
            Double.isFinite(turn.radius())
                ? OptionalDouble.of(turn.radius())
                : OptionalDouble.empty(),
            1)
        .number("load_factor", turn.loadFactor(), 2)
        .number("tip_depth_mm", Shown.mm(turn.tipDepth()), 0)
        .number("foot_share", turn.footShare(), 2)
        .number("electric_power_w", turn.electricPower(), 0)
        .flag("inside_limits", bank <= inside + ANGLE_ROUNDING);
  }
}
