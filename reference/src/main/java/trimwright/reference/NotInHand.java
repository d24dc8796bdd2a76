package trimwright.reference;

import java.util.List;

/**
 * A source that would serve but could not be obtained. Nothing is recalled from it as met.
 *
 * @param source author, title, year
 * @param wouldGive what it would be held against
 * @param whereLooked where it was looked for and what was found instead
 */
public record NotInHand(String source, String wouldGive, String whereLooked) {

  /** Every source not in hand. */
  public static List<NotInHand> list() {
    return Table.rows("not-in-hand.csv").stream()
        .map(
            row -> new NotInHand(row.get("source"), row.get("would_give"), row.get("where_looked")))
        .toList();
  }
}
