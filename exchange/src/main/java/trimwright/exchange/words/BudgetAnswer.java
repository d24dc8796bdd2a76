package trimwright.exchange.words;

import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockFile;
import trimwright.fitting.fleet.StockChoice;
import trimwright.fitting.fleet.StockCurve;

/**
 * What to own for riders, within a budget.
 *
 * @param riders who they are
 * @param stock the parts there are to choose from
 * @param bases each rider's case on some setup of the stock
 * @param budget money
 * @param owned parts owned already
 * @param unpriced parts that cannot be bought as they have no price
 * @param hardware how many sets were chosen from
 * @param choice what to buy
 * @param sets the parts of each set that a rider is given
 * @param cards each rider's card, in the file's order
 * @param curve persons served against money, before cards were solved in full
 * @param looked cards solved in full
 * @param fallen cards that passed the tables and fell at the full solution
 */
public record BudgetAnswer(
    RidersFile riders,
    StockFile stock,
    List<CaseFile> bases,
    double budget,
    List<String> owned,
    List<String> unpriced,
    int hardware,
    StockChoice choice,
    List<List<String>> sets,
    List<SharedCard> cards,
    StockCurve curve,
    int looked,
    int fallen) {
  /** Copies the lists. */
  public BudgetAnswer {
    bases = List.copyOf(bases);
    owned = List.copyOf(owned);
    unpriced = List.copyOf(unpriced);
    sets = List.copyOf(sets);
    cards = List.copyOf(cards);
  }
}
