package trimwright.exchange.words;

import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.cause.CauseOutcome;

/**
 * The cause of a trim in words: what to do first, the split with its numbers, and what to rule out
 * before believing either.
 *
 * <p>Numbers are rounded first and subtracted afterwards, so that the parts a reader sees add up to
 * the whole that the reader sees, in either family of measures.
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
   * @param measures that the reader reads
   * @return the words
   */
  public static CauseWords of(CaseFile caseFile, CauseOutcome outcome, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    if (outcome instanceof CauseOutcome.NoSplit none) {
      NoSplitWords words = new NoSplitWords(caseFile, none, amounts);
      return new CauseWords(words.headline(), words.sentences(), RuleOut.listFor(caseFile));
    }
    SplitWords words = new SplitWords(caseFile, (CauseOutcome.Split) outcome, amounts);
    return new CauseWords(words.headline(), words.sentences(), RuleOut.listFor(caseFile));
  }
}
