package trimwright.exchange.words;

import java.util.List;
import java.util.Optional;
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
 * @param order the concrete thing to do at the speed ridden, in one sentence; empty where the speed
 *     ridden trims and the wished one does not, so that the order hangs on the trim point alone
 * @param why one sentence: what the split shows or what stands in the way, to follow the order
 * @param headline one sentence: whether speed or set is to blame, and what to see to first
 * @param sentences the explanation, in reading order
 * @param ruleOutFirst plain faults to look for first, in order
 */
public record CauseWords(
    Optional<String> order,
    String why,
    String headline,
    List<String> sentences,
    List<RuleOut> ruleOutFirst) {
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
    List<RuleOut> list = RuleOut.listFor(caseFile);
    if (outcome instanceof CauseOutcome.NoSplit none) {
      NoSplitWords words = new NoSplitWords(caseFile, none, amounts);
      List<String> sentences = words.sentences();
      return new CauseWords(words.order(), words.why(), words.headline(), sentences, list);
    }
    SplitFigures figures = new SplitFigures(caseFile, (CauseOutcome.Split) outcome, amounts);
    SplitOrders orders = new SplitOrders(figures);
    List<String> sentences = new SplitWords(figures).sentences();
    return new CauseWords(
        Optional.of(orders.order()), orders.why(), orders.headline(), sentences, list);
  }
}
