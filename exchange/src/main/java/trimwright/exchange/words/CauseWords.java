package trimwright.exchange.words;

import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;

/**
 * The cause of a trim in words: what to do first, the split with its numbers, and what to rule out
 * before believing either.
 *
 * <p>Numbers are rounded first and subtracted afterwards, so that the parts a reader sees add up to
 * the whole that the reader sees.
 *
 * @param headline one sentence: what to do first
 * @param sentences the explanation, in reading order
 * @param ruleOutFirst plain faults to look for first, in order
 */
public record CauseWords(String headline, List<String> sentences, List<RuleOut> ruleOutFirst) {
  /** Copies the lists. */
  public CauseWords {
    sentences = List.copyOf(sentences);
    ruleOutFirst = List.copyOf(ruleOutFirst);
  }

  /**
   * The words for an outcome.
   *
   * @param caseFile the case
   * @param outcome its split, or why there is none
   * @return the words
   */
  public static CauseWords of(CaseFile caseFile, CauseOutcome outcome) {
    if (outcome instanceof CauseOutcome.NoSplit none) {
      return noSplit(caseFile, none);
    }
    SplitWords words = new SplitWords(caseFile, (CauseOutcome.Split) outcome);
    return new CauseWords(words.headline(), words.sentences(), RuleOut.listFor(caseFile));
  }

  private static CauseWords noSplit(CaseFile caseFile, CauseOutcome.NoSplit none) {
    String speed = Shown.decimals(Shown.kmh(none.speed()), 1) + " km/h";
    String what =
        none.wishedSpeed()
            ? "There is no split: at your wished speed of " + speed + " there is no trim."
            : "There is no split: at the " + speed + " you ride there is no trim.";
    String why = ReasonWords.of(none.reason());
    return new CauseWords(firstStep(none), List.of(what, why), RuleOut.listFor(caseFile));
  }

  private static String firstStep(CauseOutcome.NoSplit none) {
    boolean wished = none.wishedSpeed();
    return switch (none.reason()) {
      case TOO_SLOW ->
          wished
              ? "Wish for more speed, or fit a larger front wing: at your wished speed it does not"
                  + " fly."
              : "Give the speed of a flight: at the speed you gave it does not fly.";
      case STALLED ->
          wished
              ? "Wish for more speed, or fit a larger front wing: at your wished speed it stalls."
              : "Ride faster: at the speed you gave a wing is past its stall.";
      case THRUST_SHORT ->
          wished
              ? "Wish for less speed: the drive does not reach the one you want."
              : "Check the speed you gave: the drive does not reach it.";
      case FEET_CANNOT_REACH ->
          wished
              ? "Move your feet or change the set first: at your wished speed no stance holds it."
              : "Check the speed and where your feet stand: no stance holds this speed.";
    };
  }
}
