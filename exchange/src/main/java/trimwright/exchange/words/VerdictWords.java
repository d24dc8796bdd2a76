package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Spread;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * The two lines that stay on top of every screen, each short enough for two lines of a phone.
 *
 * @param first what to do at this speed
 * @param second the numbers: what it does there, and from where to where it can be ridden
 */
public record VerdictWords(String first, String second) {

  /**
   * The verdict at one speed. Its order is the cause's, so that the two never disagree.
   *
   * @param caseFile the case
   * @param curve its curve
   * @param outcome what the chosen speed gives
   * @param cause the words for the cause at that speed, in the same measures
   * @param measures that the reader reads
   * @return two lines
   */
  public static VerdictWords of(
      CaseFile caseFile, Curve curve, TrimOutcome outcome, CauseWords cause, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    String first =
        cause
            .order()
            .orElseGet(
                () ->
                    outcome
                        .findPoint()
                        .flatMap(
                            p ->
                                p.brokenLimits().stream()
                                    .sorted()
                                    .findFirst()
                                    .map(limit -> remedy(caseFile.rideCase().rider(), limit, p)))
                        .orElse(cause.headline()));
    String second =
        outcome instanceof TrimOutcome.NoTrim none
            ? noTrim(caseFile, curve, none, amounts)
            : trimmed(curve, outcome.findPoint().orElseThrow(), amounts);
    return new VerdictWords(first, second);
  }

  /**
   * The speeds that matter, in one line.
   *
   * @param curve the curve
   * @param measures that the reader reads
   * @return window, even feet and level speed
   */
  public static String speeds(Curve curve, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    List<String> parts = new ArrayList<>();
    parts.add(Sentence.upperFirst(window(curve, amounts)));
    List<String> even =
        curve.evenFeetSpeeds().stream().map(EvenFeetSpeed::speed).map(amounts::bareSpeed).toList();
    parts.add(even.isEmpty() ? "even feet nowhere" : "even feet at " + String.join(" and ", even));
    parts.add(
        curve.levelSpeed().isPresent()
            ? "level at " + amounts.bareSpeed(curve.levelSpeed().getAsDouble())
            : "level nowhere");
    return String.join("; ", parts) + ".";
  }

  /**
   * The speeds that matter, in one line, each with how far off it may be.
   *
   * @param bands the curve with its bands
   * @param measures that the reader reads
   * @return window, even feet and level speed
   */
  public static String speeds(Bands bands, Measures measures) {
    if (!bands.any()) {
      return speeds(bands.curve(), measures);
    }
    Amounts amounts = Amounts.of(measures);
    Curve curve = bands.curve();
    List<String> parts = new ArrayList<>();
    parts.add(Sentence.upperFirst(window(bands, amounts)));
    List<String> even = new ArrayList<>();
    for (int i = 0; i < curve.evenFeetSpeeds().size(); i++) {
      even.add(
          amounts.bareSpeed(curve.evenFeetSpeeds().get(i).speed())
              + reach(bands.evenFeetSpeeds().get(i), amounts));
    }
    parts.add(even.isEmpty() ? "even feet nowhere" : "even feet at " + String.join(" and ", even));
    parts.add(
        curve.levelSpeed().isPresent()
            ? "level at "
                + amounts.bareSpeed(curve.levelSpeed().getAsDouble())
                + reach(bands.levelSpeed(), amounts)
            : "level nowhere");
    return String.join("; ", parts) + ".";
  }

  private static String window(Bands bands, Amounts amounts) {
    return bands
        .curve()
        .rideableWindow()
        .map(
            w ->
                "rideable from "
                    + amounts.bareSpeed(w.from())
                    + reach(bands.rideableFrom(), amounts)
                    + " to "
                    + amounts.bareSpeed(w.to())
                    + reach(bands.rideableTo(), amounts)
                    + " "
                    + amounts.speedUnit())
        .orElse("no speed inside every limit");
  }

  private static String reach(Optional<Spread> spread, Amounts amounts) {
    return spread.map(s -> " ±" + amounts.speedReach(s.reach())).orElse("");
  }

  private static String window(Curve curve, Amounts amounts) {
    return curve
        .rideableWindow()
        .map(w -> "rideable from " + amounts.bareSpeed(w.from()) + " to " + amounts.speed(w.to()))
        .orElse("no speed inside every limit");
  }

  private static String trimmed(Curve curve, TrimPoint point, Amounts amounts) {
    return amounts.speed(point.speed())
        + ": "
        + Shown.nose(Shown.degrees(point.pitch()))
        + ", "
        + Shown.decimals(point.footShare() * 100, 0)
        + " % on the front foot; "
        + window(curve, amounts)
        + ".";
  }

  /**
   * The verdict's second line with how far off pitch and load may be. A pitch that cannot be told
   * from level is called level.
   *
   * @param bands the curve with its bands
   * @param index of a speed
   * @param measures that the reader reads
   * @return the line; empty where that speed has no band of pitch and foot share
   */
  public static Optional<String> sure(Bands bands, int index, Measures measures) {
    Optional<Spread> pitch = bands.find(index, Quantity.PITCH);
    Optional<Spread> share = bands.find(index, Quantity.FOOT_SHARE);
    if (pitch.isEmpty() || share.isEmpty()) {
      return Optional.empty();
    }
    Amounts amounts = Amounts.of(measures);
    Curve curve = bands.curve();
    double degrees = Shown.degrees(pitch.get().value());
    String reach = SureWords.degrees(pitch.get().reach());
    String deck =
        pitch.get().holds(0)
            ? "level within ±" + reach
            : Shown.decimals(Math.abs(degrees), 1) + " ±" + reach + " " + Shown.noseWord(degrees);
    return Optional.of(
        amounts.speed(curve.outcomes().get(index).speed())
            + ": "
            + deck
            + ", "
            + Shown.decimals(share.get().value() * 100, 0)
            + " ±"
            + SureWords.percentUp(share.get().reach())
            + " on the front foot; "
            + window(curve, amounts)
            + ".");
  }

  private static String noTrim(
      CaseFile caseFile, Curve curve, TrimOutcome.NoTrim none, Amounts amounts) {
    String known =
        none.reason() == NoTrimReason.FEET_CANNOT_REACH
            ? FootReach.find(none)
                .map(reach -> "pressure centre " + reach.where(amounts))
                .orElse("")
            : ReasonWords.power(caseFile, none);
    return known.isEmpty()
        ? speeds(curve, amounts.measures())
        : amounts.speed(none.speed()) + ": " + known + "; " + window(curve, amounts) + ".";
  }

  /** What to do about a limit where nothing is known of the wished speed. */
  private static String remedy(Rider rider, Limit limit, TrimPoint point) {
    String order =
        switch (limit) {
          case STALL_MARGIN -> "Ride faster";
          case FOOT_SHARE ->
              "Move your feet "
                  + (point.footShare() > rider.wishedFootShare() ? "forward" : "back");
          case STATIC_MARGIN -> "Fit a larger stabilizer or a longer fuselage";
          case PITCH -> "Ride " + (point.pitch() > 0 ? "faster" : "slower");
          case BOARD_CLEARANCE -> "Fly higher or find flatter water";
        };
    return order + ": " + ReasonWords.clause(limit, point) + ".";
  }
}
