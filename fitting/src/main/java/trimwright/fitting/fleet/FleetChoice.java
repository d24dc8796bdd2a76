package trimwright.fitting.fleet;

import java.util.List;

/**
 * A fleet for many riders.
 *
 * @param sets the hardware's places in the table, ascending
 * @param given each rider served with the best of these sets, in the table's order
 * @param served persons served; the bound is what no fleet can pass
 * @param mean mean mark over the persons served, among fleets that serve as many; 0 where nobody is
 *     served. The bound is what none of them can be below
 * @param work how large the search was
 */
public record FleetChoice(
    List<Integer> sets, List<Given> given, Proven served, Proven mean, Work work) {
  /** Copies the lists. */
  public FleetChoice {
    sets = List.copyOf(sets);
    given = List.copyOf(given);
  }

  /**
   * How large a search was.
   *
   * @param columns hardware sets that can be built and fit somebody
   * @param whole how many of them were left to choose from in whole numbers when most served was
   *     sought, after proven reductions; 0 where the bound alone was enough
   * @param wholeForMarks the same when least marks were sought
   */
  public record Work(int columns, int whole, int wholeForMarks) {}
}
