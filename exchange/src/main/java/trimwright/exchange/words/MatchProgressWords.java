package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How far a look through a stock is.
 *
 * @param pairs of wings looked through
 * @param allPairs of the stock; 0 before it is known
 * @param solved setups confirmed by the full solution
 * @param mostSolved how many will be at most; 0 before it begins
 * @param varied rows tried otherwise
 * @param allVaried rows; 0 before it begins
 */
public record MatchProgressWords(
    int pairs, int allPairs, int solved, int mostSolved, int varied, int allVaried) {
  /** Nothing has been done. */
  public static final MatchProgressWords NONE = new MatchProgressWords(0, 0, 0, 0, 0, 0);

  /** Parts of the whole that the first stage and the first two take, roughly as measured. */
  private static final double SCREENED = 0.6;

  private static final double CONFIRMED = 0.9;

  /** Such as {@code 412 of 1,160 pairs of wings; 3 of at most 32 setups confirmed}. */
  public String text() {
    if (allPairs == 0) {
      return "Laying out the stock";
    }
    List<String> parts = new ArrayList<>();
    parts.add(
        pairs < allPairs
            ? whole(pairs) + " of " + whole(allPairs) + " pairs of wings"
            : "all " + whole(allPairs) + " pairs of wings");
    if (mostSolved > 0) {
      parts.add(
          allVaried > 0
              ? whole(solved) + " setups confirmed"
              : whole(solved) + " of at most " + whole(mostSolved) + " setups confirmed");
    }
    if (allVaried > 0) {
      parts.add(
          whole(varied) + " of " + whole(allVaried) + " shown ones tried in other conditions");
    }
    return String.join("; ", parts);
  }

  /** How much of the work is done, roughly, 0 to 1. */
  public double share() {
    return SCREENED * part(pairs, allPairs)
        + (CONFIRMED - SCREENED) * (allVaried > 0 ? 1 : part(solved, mostSolved))
        + (1 - CONFIRMED) * part(varied, allVaried);
  }

  private static double part(int done, int all) {
    return all == 0 ? 0 : Math.min(1, (double) done / all);
  }

  private static String whole(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
