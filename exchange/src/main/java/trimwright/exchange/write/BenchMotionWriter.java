package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.PlayWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.motion.MotionMoment;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.ThrottleCut;
import trimwright.kernel.play.Play;
import trimwright.kernel.water.ChopWave;

/** One thing that can happen on a ride, as the Bench plays it: sentences and traces over time. */
public final class BenchMotionWriter {
  private static final String FORMAT = "trimwright-bench-motion/1";

  private BenchMotionWriter() {}

  /**
   * The answer for a case.
   *
   * @param sequence number of the question, handed back
   * @param measures what the words speak in; the traces are metric always
   * @param caseFile the case
   * @param play what was played
   * @param speed at which it began [m/s]
   * @param trace the motion; empty where the speed has no trim
   * @param cut what the feet have to do when the thrust is gone
   * @param waves the chop's waves; none in still water
   * @return JSON on one line that satisfies {@code bench_motion.schema.json}
   */
  public static String accepted(
      long sequence,
      Measures measures,
      CaseFile caseFile,
      Play play,
      double speed,
      Optional<MotionTrace> trace,
      Optional<ThrottleCut> cut,
      List<ChopWave> waves) {
    return JsonStream.text(
        json -> {
          json.text("format", FORMAT)
              .text("model_version", ModelVersion.TEXT)
              .text("case_digest", caseFile.digest())
              .whole("sequence", sequence)
              .flag("accepted", true)
              .text("measures", Codes.of(measures))
              .text("play", Codes.of(play))
              .number("speed_kmh", Shown.kmh(speed), 2)
              .text("outcome", trace.isPresent() ? "played" : "no_trim");
          if (trace.isEmpty()) {
            json.texts("words", PlayWords.noTrim(speed, measures));
          } else {
            boolean drive = caseFile.rideCase().setup().drive().isPresent();
            json.texts("words", PlayWords.listFor(play, trace.get(), cut, drive, measures));
            traces(json, trace.get());
            waves(json, caseFile, waves);
          }
        });
  }

  /**
   * The answer to a question that was given up because somebody moved a slider.
   *
   * @param sequence number of the question, handed back
   * @return JSON on one line that satisfies {@code bench_motion.schema.json}
   */
  public static String stopped(long sequence) {
    return JsonStream.text(
        json -> json.whole("sequence", sequence).flag("accepted", false).flag("stopped", true));
  }

  private static void traces(JsonStream json, MotionTrace trace) {
    json.object(
        "end",
        () ->
            json.text("code", PlayWords.code(trace.end()))
                .number("at_s", trace.last().time(), 2)
                .text("words", PlayWords.end(trace)));
    OptionalDouble touched = PlayWords.touched(trace);
    boolean apart = touched.isPresent() && touched.getAsDouble() < trace.last().time();
    json.list(
        "marks",
        apart ? List.of(touched.getAsDouble()) : List.<Double>of(),
        at -> json.number("at_s", at, 2).text("words", "The board meets the water."));
    each(json, "times_s", trace, MotionMoment::time, 3);
    each(json, "deck_pitch_deg", trace, m -> Shown.degrees(m.pitch()), 3);
    each(json, "speed_kmh_at", trace, m -> Shown.kmh(m.speed()), 3);
    each(json, "immersion_mm", trace, m -> Shown.mm(m.immersion()), 1);
    each(json, "foot_pressure_ahead_of_mast_mm", trace, m -> Shown.mm(m.footPressure()), 1);
    each(json, "thrust_n", trace, MotionMoment::thrust, 1);
    each(json, "body_ahead_mm", trace, m -> Shown.mm(m.bodyAhead()), 1);
    each(json, "bow_clearance_mm", trace, m -> Shown.mm(m.bowClearance()), 1);
    each(json, "water_mm", trace, m -> Shown.mm(m.water()), 1);
  }

  private static void each(
      JsonStream json,
      String name,
      MotionTrace trace,
      ToDoubleFunction<MotionMoment> value,
      int decimals) {
    json.numbers(name, trace.moments().stream().mapToDouble(value).toArray(), decimals);
  }

  private static void waves(JsonStream json, CaseFile caseFile, List<ChopWave> waves) {
    json.flag("still_water", waves.isEmpty());
    if (waves.isEmpty()) {
      json.none("waves");
      return;
    }
    json.object(
        "waves",
        () ->
            json.list(
                    "components",
                    waves,
                    wave ->
                        json.number("height_mm", Shown.mm(2 * wave.amplitude()), 2)
                            .number("length_mm", Shown.mm(2 * Math.PI / wave.wavenumber()), 1)
                            .number("phase_deg", Shown.degrees(wave.phase()), 2))
                .text(
                    "note",
                    "Waves from ahead, one draw from a spectrum for the case's chop of "
                        + Shown.decimals(100 * caseFile.rideCase().chopHeight(), 0)
                        + " cm."));
  }
}
