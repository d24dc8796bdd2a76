package trimwright.exchange.words;

import java.util.Objects;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.ChangedCases;
import trimwright.exchange.read.StockFile;
import trimwright.fitting.change.ChangeAdvice;
import trimwright.fitting.change.Effect;
import trimwright.fitting.wish.RidingKind;

/**
 * What to change about a case.
 *
 * @param base the case as it is
 * @param stock where other parts come from, where one was given
 * @param kind whose wishes were taken
 * @param advice what was found
 * @param cases the case after changes
 */
public record ChangeAnswer(
    CaseFile base,
    Optional<StockFile> stock,
    RidingKind kind,
    ChangeAdvice advice,
    ChangedCases cases) {
  /** Checks that nothing is missing. */
  public ChangeAnswer {
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(stock, "stock");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(advice, "advice");
    Objects.requireNonNull(cases, "cases");
  }

  /**
   * The case file after changes.
   *
   * @param effect of this advice
   */
  public CaseFile caseFile(Effect effect) {
    return cases.caseFile(effect.changes()).findValue().orElseThrow();
  }
}
