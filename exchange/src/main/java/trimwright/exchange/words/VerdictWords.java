package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * The two lines that stay on top of every screen.
 *
 * @param first what it does at this speed and what to do about it
 * @param second the speeds that matter
 */
public record VerdictWords(String first, String second) {
  /** The trade's step for angles: less is as wished [degrees]. */
  private static final double ANGLE_STEP_DEGREES = 0.5;

  /** A foot share this near the wish is as wished [1]. */
  private static final double SHARE_STEP = 0.05;

  /**
   * The verdict at one speed.
   *
   * @param caseFile the case
   * @param curve its curve
   * @param outcome what the chosen speed gives
   * @param measures that the reader reads
   * @return two lines
   */
  public static VerdictWords of(
      CaseFile caseFile, Curve curve, TrimOutcome outcome, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    String first =
        outcome instanceof TrimOutcome.NoTrim none
            ? noTrim(caseFile, none, amounts)
            : trimmed(caseFile, outcome.findPoint().orElseThrow(), amounts);
    boolean waves = outcome.speed() < WaveWords.speed(caseFile);
    return new VerdictWords(
        first, speeds(curve, measures) + (waves ? " " + WaveWords.of(caseFile, measures) : ""));
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
    parts.add(
        curve
            .rideableWindow()
            .map(
                w ->
                    "Rideable from " + amounts.bareSpeed(w.from()) + " to " + amounts.speed(w.to()))
            .orElse("No speed here is inside every limit"));
    List<String> even =
        curve.evenFeetSpeeds().stream().map(EvenFeetSpeed::speed).map(amounts::bareSpeed).toList();
    parts.add(even.isEmpty() ? "even feet nowhere" : "even feet at " + String.join(" and ", even));
    parts.add(
        curve.levelSpeed().isPresent()
            ? "level at " + amounts.bareSpeed(curve.levelSpeed().getAsDouble())
            : "level nowhere");
    return String.join("; ", parts) + ".";
  }

  private static String noTrim(CaseFile caseFile, TrimOutcome.NoTrim none, Amounts amounts) {
    String speed = amounts.speed(none.speed());
    return switch (none.reason()) {
      case TOO_SLOW -> "Ride faster: at " + speed + " the wings cannot carry you.";
      case STALLED -> "Ride faster: at " + speed + " a wing is past its stall.";
      case THRUST_SHORT -> "Ride slower: the drive cannot push you at " + speed + need(none) + ".";
      case FEET_CANNOT_REACH ->
          FootReach.find(none)
              .map(reach -> reach(caseFile, speed, reach, amounts))
              .orElse("Change speed, stance or set: at " + speed + " your feet cannot reach.");
    };
  }

  private static String need(TrimOutcome.NoTrim none) {
    return none.wouldNeed()
        .filter(p -> p.electricPower().isPresent())
        .map(p -> ", it would take " + watts(p.electricPower().getAsDouble()))
        .orElse("");
  }

  private static String reach(CaseFile caseFile, String speed, FootReach reach, Amounts amounts) {
    String orders = FeetCure.of(caseFile, reach, amounts).orders();
    return (orders.isEmpty() ? "Change speed or set" : SplitWords.upperFirst(orders))
        + ": at "
        + speed
        + " "
        + reach.place(amounts)
        + ".";
  }

  private static String trimmed(CaseFile caseFile, TrimPoint point, Amounts amounts) {
    String state =
        "at "
            + amounts.speed(point.speed())
            + " "
            + Shown.nose(Shown.degrees(point.pitch()))
            + ", "
            + Shown.decimals(point.footShare() * 100, 0)
            + " % on the front foot.";
    return point.brokenLimits().stream()
            .sorted()
            .findFirst()
            .map(limit -> remedy(caseFile.rideCase().rider(), limit, point))
            .orElseGet(() -> inside(caseFile.rideCase().rider(), point))
        + " "
        + state;
  }

  private static String remedy(Rider rider, Limit limit, TrimPoint point) {
    return switch (limit) {
      case STALL_MARGIN ->
          "Ride faster, the stall is only "
              + Shown.decimals(Shown.degrees(point.stallMargin()), 1)
              + "° away:";
      case FOOT_SHARE ->
          "Move your feet "
              + (point.footShare() > rider.wishedFootShare() ? "forward" : "back")
              + ", the weight stands too near one of them:";
      case STATIC_MARGIN -> "Change the set, the foil by itself is unstable:";
      case PITCH ->
          "Ride " + (point.pitch() > 0 ? "faster" : "slower") + ", the deck is tilted too far:";
      case BOARD_CLEARANCE -> "Fly higher or find flatter water, the board touches the chop:";
    };
  }

  /** Inside the limits, and how near to what the rider wishes. */
  private static String inside(Rider rider, TrimPoint point) {
    double turned = Shown.degrees(point.pitch() - rider.wishedPitch());
    double shifted = point.footShare() - rider.wishedFootShare();
    boolean feetFirst =
        Math.abs(shifted) / SplitWords.SHARE_WEIGHT
            > Math.abs(turned) / SplitWords.ANGLE_WEIGHT_DEGREES;
    if (Math.abs(turned) >= ANGLE_STEP_DEGREES && !feetFirst) {
      return "Inside every limit, but more " + Shown.noseWord(turned) + " than you wish:";
    }
    if (Math.abs(shifted) >= SHARE_STEP) {
      return "Inside every limit, but "
          + (shifted > 0 ? "more" : "less")
          + " on the front foot than you wish:";
    }
    return "Inside every limit and as you wish:";
  }

  private static String watts(double power) {
    return Shown.decimals(power, 0) + " W";
  }
}
