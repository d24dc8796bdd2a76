package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One hardware set for several riders, each with a card of their own: the one that serves most
 * persons; among those the one whose worst mark is least, then the one whose mean over the persons
 * served is least, then the table's order. Every set is looked at.
 */
public final class Household {
  private static final Comparator<SharedSet> BEST_FIRST =
      Comparator.comparingInt((SharedSet shared) -> -shared.persons())
          .thenComparingDouble(SharedSet::worst)
          .thenComparingDouble(SharedSet::mean)
          .thenComparingInt(SharedSet::set);

  private Household() {}

  /**
   * The best sets to share.
   *
   * @param table riders and hardware
   * @param most how many to list at most, above 0
   * @return best first; none where no set fits anybody
   * @throws IllegalArgumentException if none are to be listed
   */
  public static List<SharedSet> best(FitTable table, int most) {
    if (most < 1) {
      throw new IllegalArgumentException("1 set or more must be listed, was " + most);
    }
    List<SharedSet> shared = new ArrayList<>();
    for (int set = 0; set < table.hardware().size(); set++) {
      SharedSet one = shared(table, set);
      if (one.persons() > 0) {
        shared.add(one);
      }
    }
    return shared.stream().sorted(BEST_FIRST).limit(most).toList();
  }

  private static SharedSet shared(FitTable table, int set) {
    int persons = 0;
    double worst = 0;
    double sum = 0;
    for (int rider = 0; rider < table.riders().size(); rider++) {
      if (table.fits(rider, set)) {
        int of = table.riders().get(rider).persons();
        persons += of;
        worst = Math.max(worst, table.mark(rider, set));
        sum += of * table.mark(rider, set);
      }
    }
    return new SharedSet(set, persons, worst, persons == 0 ? 0 : sum / persons);
  }

  /**
   * What each rider would have alone: the set with the least mark, the table's order among equals.
   *
   * @return one for each rider whom any set fits, in the table's order
   */
  public static List<Given> alone(FitTable table) {
    List<Given> alone = new ArrayList<>();
    for (int rider = 0; rider < table.riders().size(); rider++) {
      Given best = null;
      for (int set = 0; set < table.hardware().size(); set++) {
        if (table.fits(rider, set) && (best == null || table.mark(rider, set) < best.mark())) {
          best = new Given(rider, set, table.mark(rider, set));
        }
      }
      if (best != null) {
        alone.add(best);
      }
    }
    return alone;
  }

  /**
   * What sharing a set costs a rider, as a mark above that of the set the rider would have alone.
   *
   * @return 0 or more; none where the set does not fit the rider [1]
   */
  public static OptionalDouble cost(FitTable table, int rider, int set) {
    if (!table.fits(rider, set)) {
      return OptionalDouble.empty();
    }
    double least = table.mark(rider, set);
    for (int other = 0; other < table.hardware().size(); other++) {
      if (table.fits(rider, other)) {
        least = Math.min(least, table.mark(rider, other));
      }
    }
    return OptionalDouble.of(table.mark(rider, set) - least);
  }
}
