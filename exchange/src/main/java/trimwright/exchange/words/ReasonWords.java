package trimwright.exchange.words;

import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimOutcome.Excess;
import trimwright.kernel.trim.TrimPoint;

/** Reasons and limits as short sentences. */
public final class ReasonWords {
  private ReasonWords() {}

  /**
   * Why there is no trim at a speed.
   *
   * @param reason the reason
   * @return one sentence
   */
  public static String of(NoTrimReason reason) {
    return switch (reason) {
      case TOO_SLOW -> "Too slow to fly: the wings cannot carry the weight at this speed.";
      case STALLED -> "Stalled: a part of a wing would have to fly past its lift limit.";
      case THRUST_SHORT -> "Not enough power: the drive cannot push this hard at this speed.";
      case FEET_CANNOT_REACH ->
          "Feet cannot reach: the weight would have to stand in front of the front foot or behind"
              + " the back foot.";
    };
  }

  /**
   * Why there is no trim, with the figures that are known.
   *
   * @param none the outcome
   * @param measures that the reader reads
   * @return a sentence or two
   */
  public static String of(TrimOutcome.NoTrim none, Measures measures) {
    return of(none, Amounts.of(measures));
  }

  static String of(TrimOutcome.NoTrim none, Amounts amounts) {
    if (none.excess().isPresent()) {
      return none.excess().get() == Excess.WINGS
          ? "Too much lift: even at the lowest pitch computed the wings lift more than the weight."
          : "Pushed up: buoyancy, thrust and pull carry more than the weight without the wings.";
    }
    return switch (none.reason()) {
      case TOO_SLOW, STALLED -> of(none.reason());
      case THRUST_SHORT ->
          none.wouldNeed()
              .filter(p -> p.electricPower().isPresent())
              .map(
                  p ->
                      "Not enough power: it would take "
                          + Shown.decimals(p.electricPower().getAsDouble(), 0)
                          + " W at this speed.")
              .orElseGet(() -> of(none.reason()));
      case FEET_CANNOT_REACH ->
          FootReach.find(none)
              .map(
                  reach ->
                      "Feet cannot reach: "
                          + reach.place(amounts)
                          + ". Move both feet at least "
                          + amounts.moveAtLeast(reach.shift()).text()
                          + (reach.ahead() ? " forward" : " back")
                          + ", or the mast as far the other way.")
              .orElseGet(() -> of(none.reason()));
    };
  }

  /**
   * The outcome in a few words, with how far the feet cannot reach.
   *
   * @param none the outcome
   * @param measures that the reader reads
   * @return a few letters
   */
  public static String brief(TrimOutcome.NoTrim none, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    if (none.excess().isPresent()) {
      return none.excess().get() == Excess.WINGS ? "too much lift" : "pushed up";
    }
    String words = brief(none.reason());
    return none.reason() == NoTrimReason.FEET_CANNOT_REACH
        ? FootReach.find(none)
            .map(
                r ->
                    words
                        + " by "
                        + amounts.lengthUp(r.distance())
                        + (r.ahead() ? " ahead" : " behind"))
            .orElse(words)
        : words;
  }

  /**
   * The outcome in one or two words, for a column or a button.
   *
   * @param reason the reason
   * @return a few letters
   */
  public static String brief(NoTrimReason reason) {
    return switch (reason) {
      case TOO_SLOW -> "too slow";
      case STALLED -> "stalled";
      case THRUST_SHORT -> "power short";
      case FEET_CANNOT_REACH -> "feet cannot reach";
    };
  }

  /** Why there is no trim, to follow a speed. */
  static String clause(TrimOutcome.NoTrim none) {
    if (none.excess().isPresent()) {
      return none.excess().get() == Excess.WINGS
          ? "the wings lift more than the weight"
          : "it is pushed up without its wings";
    }
    return switch (none.reason()) {
      case TOO_SLOW -> "the wings cannot carry you";
      case STALLED -> "a wing is past its stall";
      case THRUST_SHORT -> "the drive cannot push you";
      case FEET_CANNOT_REACH -> "your feet cannot reach";
    };
  }

  /** What a limit's breaking means, to follow an order. */
  static String clause(Limit limit, TrimPoint point) {
    return switch (limit) {
      case STALL_MARGIN -> {
        String degrees = Shown.decimals(Shown.degrees(point.stallMargin()), 1);
        yield degrees.equals("0.0")
            ? "the wing is at its stall"
            : "the stall is only " + degrees + "° away";
      }
      case FOOT_SHARE -> "the weight stands too near one foot";
      case STATIC_MARGIN -> "the foil by itself is unstable";
      case PITCH -> "the deck is tilted too far";
      case BOARD_CLEARANCE -> "the board touches the chop";
    };
  }

  /** What would be needed of the drive and what there is; empty where that is not the reason. */
  static String power(CaseFile caseFile, TrimOutcome.NoTrim none) {
    return none.reason() == NoTrimReason.THRUST_SHORT
        ? none.wouldNeed()
            .map(point -> DriveLimitWords.takes(caseFile.rideCase(), point))
            .orElse("")
        : "";
  }

  /**
   * What breaking a limit means.
   *
   * @param limit the limit broken
   * @return one sentence
   */
  public static String of(Limit limit) {
    return switch (limit) {
      case STALL_MARGIN -> "Too near the stall.";
      case FOOT_SHARE -> "The weight stands too near one foot: hardly anything left to lean with.";
      case STATIC_MARGIN ->
          "The foil by itself is unstable: without you to balance it its pitch runs away.";
      case PITCH -> "The deck is tilted too far.";
      case BOARD_CLEARANCE -> "The board would touch the chop.";
    };
  }

  /**
   * A limit in one or two words.
   *
   * @param limit the limit broken
   * @return a few letters
   */
  public static String brief(Limit limit) {
    return switch (limit) {
      case STALL_MARGIN -> "near stall";
      case FOOT_SHARE -> "one foot";
      case STATIC_MARGIN -> "foil unstable";
      case PITCH -> "deck tilted";
      case BOARD_CLEARANCE -> "touches chop";
    };
  }
}
