package trimwright.fitting.fleet;

import java.util.List;

/**
 * A point of the curve of persons served against money.
 *
 * @param money the least that serves so many; the bound is what no choice that does can cost less
 *     than
 * @param persons served
 * @param bought parts that do it, in the table's order
 */
public record StockPoint(Proven money, int persons, List<String> bought) {
  /** Copies the list. */
  public StockPoint {
    bought = List.copyOf(bought);
  }
}
