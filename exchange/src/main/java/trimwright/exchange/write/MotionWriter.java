package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.MannersAt;
import trimwright.exchange.words.MotionWords;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.motion.ChopAnswer;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** How a case moves about its trims, as JSON and as text. */
public final class MotionWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-motion/1";

  private MotionWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param points its manners over speed
   * @return text that satisfies {@code motion.schema.json}
   */
  public static String json(CaseFile caseFile, List<MannersAt> points) {
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    document
        .fields()
        .text("name", caseFile.name())
        .text("sections", SectionCode.of(caseFile))
        .number("chop_height_m", caseFile.rideCase().chopHeight())
        .number("wished_speed_kmh", Shown.kmh(caseFile.rideCase().rider().wishedSpeed()))
        .number("answer_delay_s", Manners.DELAY)
        .list("points", points, MotionWriter::point)
        .texts("words", MotionWords.of(caseFile, points, Measures.METRIC))
        .texts("cautions", CautionWords.listFor(caseFile));
    return document.text();
  }

  private static void point(JsonFields fields, MannersAt point) {
    TrimOutcome outcome = point.outcome();
    fields.number("speed_kmh", Shown.kmh(outcome.speed())).text("outcome", Codes.of(outcome));
    outcome
        .findPoint()
        .ifPresentOrElse(
            p -> fields.texts("limits", Codes.of(p.brokenLimits())), () -> fields.none("limits"));
    point
        .manners()
        .ifPresentOrElse(m -> manners(fields.object("manners"), m), () -> fields.none("manners"));
  }

  private static void manners(JsonFields fields, Manners m) {
    Optional<Mode> growing = MannersAt.growing(m);
    fields
        .text("hold", Codes.of(m.hold()))
        .text("hold_words", MotionWords.brief(m.hold()))
        .number("time_to_double_s", growing.map(Mode::timeToDouble).orElse(OptionalDouble.empty()))
        .list("modes", m.modes(), MotionWriter::mode)
        .number("peak_pitch_rate_deg_s_per_cm", Shown.degrees(m.peakPitchRate()))
        .number("seconds_to_10_cm", m.lockedIn());
    m.chop().ifPresentOrElse(c -> chop(fields.object("chop"), c), () -> fields.none("chop"));
  }

  private static void mode(JsonFields fields, Mode mode) {
    fields
        .number("growth_per_s", mode.growth())
        .number("frequency_rad_s", mode.frequency())
        .number("period_s", mode.period())
        .number("damping_ratio", mode.dampingRatio())
        .number("time_to_double_s", mode.timeToDouble())
        .number("time_to_half_s", mode.timeToHalf())
        .text("mainly", Codes.of(mode.mainly()));
  }

  private static void chop(JsonFields fields, ChopAnswer c) {
    fields
        .number("foot_correction_rms_mm", Shown.mm(c.footCorrection()))
        .number("frequency_hz", c.frequency())
        .flag("slow_enough_for_feet", c.frequency() <= ChopAnswer.FOLLOWED)
        .number("pitch_rms_deg", Shown.degrees(c.pitch()))
        .number("rise_rms_mm", Shown.mm(c.rise()))
        .number("deck_acceleration_rms_m_s2", c.acceleration())
        .list("waves", c.waves(), MotionWriter::wave);
  }

  private static void wave(JsonFields fields, ChopAnswer.WaveAnswer wave) {
    fields
        .number("length_m", wave.length())
        .number("frequency_hz", wave.encounter() / (2 * Math.PI))
        .number("pitch_deg_per_m", Shown.degrees(wave.pitch()))
        .number("rise_m_per_m", wave.rise())
        .number("deck_acceleration_m_s2_per_m", wave.acceleration())
        .number("foot_correction_m_per_m", wave.footCorrection());
  }

  /**
   * A table for a terminal, with the words above it.
   *
   * @param caseFile the case
   * @param points its manners over speed
   * @return the text
   */
  public static String table(CaseFile caseFile, List<MannersAt> points) {
    StringBuilder text = new StringBuilder(caseFile.name()).append("\n\n");
    MotionWords.of(caseFile, points, Measures.METRIC)
        .forEach(sentence -> text.append(sentence).append('\n'));
    TextTable table =
        new TextTable()
            .number("speed", "km/h")
            .number("doubles", "s")
            .words("most")
            .number("swing", "s")
            .number("damping", "")
            .number("pitchy", "deg/s")
            .number("10 cm", "s")
            .number("feet", "mm")
            .number("deck", "m/s²")
            .number("waves", "1/s")
            .words("hold")
            .words("outcome");
    points.forEach(point -> table.row(row(point)));
    return text.append('\n')
        .append(table.text())
        .append("\nIn the chop of the case: feet, deck and waves. - where there is none.\n")
        .append(CautionWords.first())
        .append('\n')
        .toString();
  }

  private static List<String> row(MannersAt point) {
    List<String> row = new ArrayList<>();
    row.add(Shown.decimals(Shown.kmh(point.outcome().speed()), 1));
    if (point.manners().isEmpty()) {
      row.addAll(Collections.nCopies(10, "-"));
    } else {
      Manners m = point.manners().get();
      Optional<Mode> growing = MannersAt.growing(m);
      Optional<Mode> swing = MannersAt.swing(m);
      Optional<ChopAnswer> chop = m.chop();
      row.add(cell(growing.map(Mode::timeToDouble).orElse(OptionalDouble.empty()), 1));
      row.add(growing.map(g -> Codes.of(g.mainly())).orElse("-"));
      row.add(cell(swing.map(Mode::period).orElse(OptionalDouble.empty()), 1));
      row.add(swing.map(s -> Shown.decimals(s.dampingRatio(), 2)).orElse("-"));
      row.add(Shown.decimals(Shown.degrees(m.peakPitchRate()), 1));
      row.add(cell(m.lockedIn(), 1));
      row.add(chop.map(c -> Shown.decimals(Shown.mm(c.footCorrection()), 0)).orElse("-"));
      row.add(chop.map(c -> Shown.decimals(c.acceleration(), 2)).orElse("-"));
      row.add(chop.map(c -> Shown.decimals(c.frequency(), 1)).orElse("-"));
      row.add(MotionWords.brief(m.hold()));
    }
    row.add(outcome(point.outcome()));
    return row;
  }

  private static String outcome(TrimOutcome outcome) {
    if (outcome instanceof TrimOutcome.NoTrim none) {
      return ReasonWords.brief(none, Measures.METRIC);
    }
    TrimPoint p = outcome.findPoint().orElseThrow();
    return p.brokenLimits().isEmpty()
        ? "rideable"
        : p.brokenLimits().stream()
            .sorted()
            .map(ReasonWords::brief)
            .collect(Collectors.joining(", "));
  }

  private static String cell(OptionalDouble value, int decimals) {
    return value.isPresent() ? Shown.decimals(value.getAsDouble(), decimals) : "-";
  }
}
