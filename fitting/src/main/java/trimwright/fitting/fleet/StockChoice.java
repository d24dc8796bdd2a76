package trimwright.fitting.fleet;

import java.util.List;

/**
 * What to own within a budget.
 *
 * @param bought parts to buy, each once, in the table's order; those already owned are not among
 *     them, nor is anything that nobody is given
 * @param money what they cost together
 * @param given each rider served with the best set that can be put together, in the table's order
 * @param served persons served; the bound is what no choice within the budget can pass
 * @param mean mean mark over the persons served, among the choices that serve as many; 0 where
 *     nobody is served. The bound is what none of them can be below
 */
public record StockChoice(
    List<String> bought, double money, List<Given> given, Proven served, Proven mean) {
  /** Copies the lists. */
  public StockChoice {
    bought = List.copyOf(bought);
    given = List.copyOf(given);
  }
}
