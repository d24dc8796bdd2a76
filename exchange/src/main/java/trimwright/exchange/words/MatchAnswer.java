package trimwright.exchange.words;

import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.StockFile;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.wish.RidingKind;

/**
 * Which setups of a stock suit the rider of a case.
 *
 * @param base rider, water and ride
 * @param stock the parts
 * @param kind whose wishes were taken
 * @param result what was found
 * @param cases the case on each of the result's rows, in their order
 */
public record MatchAnswer(
    CaseFile base, StockFile stock, RidingKind kind, MatchResult result, List<CaseFile> cases) {
  /** Copies the list. */
  public MatchAnswer {
    cases = List.copyOf(cases);
    if (cases.size() != result.rows().size()) {
      throw new IllegalArgumentException(
          "there must be a case for each of "
              + result.rows().size()
              + " rows, were "
              + cases.size());
    }
  }
}
