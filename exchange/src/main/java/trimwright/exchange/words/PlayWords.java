package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionMoment;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.ThrottleCut;
import trimwright.kernel.play.Play;
import trimwright.kernel.play.PlaySolver;

/** What a play showed, in words. They tell what happened; none of them says that it is safe. */
public final class PlayWords {

  private final Amounts amounts;

  private PlayWords(Measures measures) {
    amounts = Amounts.of(measures);
  }

  /**
   * What there is to say of a play.
   *
   * @param play what was played
   * @param trace the motion
   * @param cut what the feet have to do when the thrust is gone
   * @param hasDrive whether there is a drive
   * @param measures what the words speak in
   * @return two or three sentences
   */
  public static List<String> listFor(
      Play play,
      MotionTrace trace,
      Optional<ThrottleCut> cut,
      boolean hasDrive,
      Measures measures) {
    return new PlayWords(measures).sentences(play, trace, cut, hasDrive);
  }

  /**
   * What there is to say where a speed has no trim.
   *
   * @param speed [m/s]
   * @param measures what the words speak in
   * @return one sentence
   */
  public static List<String> noTrim(double speed, Measures measures) {
    return List.of(
        "Choose another speed: at "
            + Amounts.of(measures).speed(speed)
            + " this case has no steady ride from which anything could begin.");
  }

  private List<String> sentences(
      Play play, MotionTrace trace, Optional<ThrottleCut> cut, boolean hasDrive) {
    List<String> words = new ArrayList<>();
    switch (play) {
      case FOOT_FORWARD -> words.add(unnoticed(trace));
      case LEAN_FORWARD ->
          words.add("Nobody corrects: the weight stays on the front foot. " + nose(trace));
      case LEAN_BACK ->
          words.add("Nobody corrects: the weight stays on the back foot. " + nose(trace));
      case THROTTLE_UP ->
          words.add(
              (hasDrive ? "A tenth more thrust" : "A tenth more pull")
                  + " and feet that stay: "
                  + Sentence.lowerFirst(nose(trace)));
      case THROTTLE_CUT -> cut.ifPresent(c -> words.addAll(cut(c, hasDrive)));
      case GUST ->
          words.add(
              "A gust of "
                  + amounts.speed(PlaySolver.GUST)
                  + " more from ahead, gone after a second. "
                  + nose(trace));
      case CHOP -> words.add(chop(trace));
      case TOUCHDOWN -> words.add(touchdown(trace));
      case NOSE_DROP ->
          words.add(
              "The weight goes to the front foot and the throttle to nothing, with no correction for"
                  + " 0.6 s. "
                  + nose(trace));
      case BREACH ->
          words.add(
              "The weight goes to the back foot"
                  + (hasDrive ? " at all the power there is. " : ". ")
                  + nose(trace));
    }
    words.add(end(trace));
    if (play == Play.NOSE_DROP || play == Play.BREACH) {
      words.add("Licensed instruction, local rules and the makers' limits come first.");
    }
    return words;
  }

  private String unnoticed(MotionTrace trace) {
    double rate = 0;
    for (MotionMoment m : trace.moments()) {
      rate = m.time() <= Manners.WITHIN ? Math.max(rate, Math.abs(m.pitchRate())) : rate;
    }
    String turned =
        "A centimetre that you do not notice turns the nose down at up to "
            + Shown.decimals(Math.toDegrees(rate), 1)
            + "° a second";
    OptionalDouble time =
        trace.moments().stream()
            .filter(m -> Math.abs(m.immersion() - trace.first().immersion()) >= Manners.HEIGHT)
            .mapToDouble(MotionMoment::time)
            .findFirst();
    return time.isPresent()
        ? turned
            + " and costs "
            + amounts.length(Manners.HEIGHT)
            + " of height in "
            + seconds(time.getAsDouble())
            + "."
        : turned + " and costs less than " + amounts.length(Manners.HEIGHT) + " of height.";
  }

  /** How far the nose went, and how quickly. */
  private String nose(MotionTrace trace) {
    double begin = trace.first().pitch();
    MotionMoment furthest = trace.first();
    for (MotionMoment m : trace.moments()) {
      if (Math.abs(m.pitch() - begin) > Math.abs(furthest.pitch() - begin)) {
        furthest = m;
      }
    }
    double by = Math.toDegrees(furthest.pitch() - begin);
    if (Math.abs(by) < 0.05) {
      return "The nose stays where it was.";
    }
    return "The nose goes "
        + (by > 0 ? "up" : "down")
        + " by "
        + Shown.decimals(Math.abs(by), 1)
        + "° within "
        + seconds(furthest.time())
        + ".";
  }

  private List<String> cut(ThrottleCut cut, boolean hasDrive) {
    String first = hasDrive ? "Be ready before you let go: " : "Be ready before the pull lets go: ";
    return List.of(
        first
            + "to hold the nose your feet must press "
            + amounts.length(Math.abs(cut.needed()))
            + (cut.needed() < 0 ? " further back" : " further forward")
            + ", at once.",
        "A body that does nothing presses "
            + amounts.length(Math.abs(cut.passive()))
            + (cut.passive() < 0 ? " further back" : " further forward")
            + " of itself, because the board slows down and the body does not.");
  }

  private String chop(MotionTrace trace) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double square = 0;
    double mean = trace.moments().stream().mapToDouble(MotionMoment::load).average().orElse(0);
    for (MotionMoment m : trace.moments()) {
      low = Math.min(low, m.pitch());
      high = Math.max(high, m.pitch());
      square += (m.load() - mean) * (m.load() - mean);
    }
    double share = mean > 0 ? Math.sqrt(square / trace.moments().size()) / mean : 0;
    double over = Math.toDegrees(high - low);
    return "Nobody corrects: the pitch wanders over "
        + (over < 0.1 ? "less than 0.1" : Shown.decimals(over, 1))
        + "°, and the load on your legs swings by "
        + Shown.decimals(100 * share, 0)
        + " % either way.";
  }

  private String touchdown(MotionTrace trace) {
    return touched(trace).isPresent()
        ? "The board meets the water after "
            + seconds(touched(trace).getAsDouble())
            + ", and your weight is back a moment before. "
            + nose(trace)
        : "The board does not quite meet the water. " + nose(trace);
  }

  /**
   * When the board first meets the water.
   *
   * @param trace the motion
   * @return [s]; empty if it stays clear
   */
  public static OptionalDouble touched(MotionTrace trace) {
    return trace.moments().stream()
        .filter(m -> Math.min(m.bowClearance(), m.sternClearance()) <= 0)
        .mapToDouble(MotionMoment::time)
        .findFirst();
  }

  /**
   * How a motion ended.
   *
   * @param trace the motion
   * @return a sentence
   */
  public static String end(MotionTrace trace) {
    String after = seconds(trace.last().time());
    return switch (trace.end()) {
      case RAN_OUT -> after + " were looked at; nothing had ended it by then.";
      case BOW_TOUCHES -> "The bow touches the water after " + after + ".";
      case STERN_TOUCHES -> "The stern touches the water after " + after + ".";
      case WING_BREACHES -> "A wing comes out of the water after " + after + ".";
      case PROPELLER_BREACHES ->
          "A blade of the propeller comes out of the water after " + after + ".";
      case RIDER_FALLS -> "After " + after + " the body is where no feet can hold it.";
      case LIMIT_OF_MODEL -> "After " + after + " it is beyond what can be computed.";
    };
  }

  /** The end as a code of the page. */
  public static String code(MotionEnd end) {
    return switch (end) {
      case BOW_TOUCHES, STERN_TOUCHES -> "board_touches";
      default -> end.name().toLowerCase(java.util.Locale.ROOT);
    };
  }

  private static String seconds(double time) {
    return Shown.decimals(time, time < 1 ? 2 : 1) + " s";
  }
}
