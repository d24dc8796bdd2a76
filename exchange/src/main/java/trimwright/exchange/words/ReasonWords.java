package trimwright.exchange.words;

import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;

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
      case STATIC_MARGIN -> "With your feet still the pitch runs away by itself.";
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
      case STATIC_MARGIN -> "pitch runs away";
      case PITCH -> "deck tilted";
      case BOARD_CLEARANCE -> "touches chop";
    };
  }
}
