package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What serves a rider: options, each some items that must all be there, with a mark. Best mark
 * first.
 */
final class RiderChoices {
  private final double persons;
  private final int[][] options;
  private final double[] marks;
  private final int[] items;
  private final int[][] optionsOf;

  /**
   * An option.
   *
   * @param items what must be there, ascending
   * @param mark of the rider with it
   */
  record Option(List<Integer> items, double mark) {}

  /**
   * Sorts the options, and keeps of those with the same items the one with the least mark: whenever
   * another of them is there, so is it.
   *
   * @param persons how many riders
   * @param all the options
   * @param count how many items there are
   */
  RiderChoices(double persons, List<Option> all, int count) {
    this.persons = persons;
    Map<List<Integer>, Double> least = new HashMap<>();
    for (Option option : all) {
      least.merge(option.items(), option.mark(), Math::min);
    }
    List<Option> kept = new ArrayList<>();
    least.forEach((items, mark) -> kept.add(new Option(items, mark)));
    kept.sort(
        Comparator.comparingDouble(Option::mark)
            .thenComparing(option -> option.items().size())
            .thenComparing(option -> option.items().toString()));
    dropBehindFree(kept);
    options = new int[kept.size()][];
    marks = new double[kept.size()];
    int[] often = new int[count];
    for (int o = 0; o < options.length; o++) {
      options[o] = kept.get(o).items().stream().mapToInt(Integer::intValue).toArray();
      marks[o] = kept.get(o).mark();
      for (int item : options[o]) {
        often[item]++;
      }
    }
    items = IntStream.range(0, count).filter(i -> often[i] > 0).toArray();
    optionsOf = new int[count][];
    for (int item = 0; item < count; item++) {
      optionsOf[item] = new int[often[item]];
    }
    int[] next = new int[count];
    for (int o = 0; o < options.length; o++) {
      for (int item : options[o]) {
        optionsOf[item][next[item]++] = o;
      }
    }
  }

  /** What needs nothing is always there: options of a worse mark are never the best. */
  private static void dropBehindFree(List<Option> sorted) {
    for (int o = 0; o < sorted.size(); o++) {
      if (sorted.get(o).items().isEmpty()) {
        sorted.subList(o + 1, sorted.size()).clear();
        return;
      }
    }
  }

  /** Whether an option needs nothing. */
  boolean isServedAnyway() {
    return options.length > 0 && options[options.length - 1].length == 0;
  }

  double persons() {
    return persons;
  }

  /** Whether an item is in any option. */
  boolean has(int item) {
    return optionsOf[item].length > 0;
  }

  int count() {
    return options.length;
  }

  double mark(int option) {
    return marks[option];
  }

  int[] option(int option) {
    return options[option];
  }

  /** The best option whose items are all there; the number of options where none is. */
  int best(boolean[] there) {
    for (int o = 0; o < options.length; o++) {
      boolean all = true;
      for (int item : options[o]) {
        all &= there[item];
      }
      if (all) {
        return o;
      }
    }
    return options.length;
  }

  /**
   * Items of which every one of the first options has at least one, none of them to spare, and of
   * little weight: all items are put in, the heaviest first, but for those that would complete an
   * option; what stays out meets every option (each lacks something), and each of it is needed (it
   * would have completed one).
   *
   * @param first how many options, best first
   * @param weight of each item
   */
  boolean[] transversal(int first, double[] weight) {
    Integer[] order = Arrays.stream(items).boxed().toArray(Integer[]::new);
    Arrays.sort(
        order,
        Comparator.comparingDouble((Integer item) -> -weight[item])
            .thenComparingInt(item -> optionsOf[item].length)
            .thenComparingInt(item -> item));
    int[] missing = new int[first];
    for (int o = 0; o < first; o++) {
      missing[o] = options[o].length;
    }
    boolean[] out = new boolean[weight.length];
    for (int item : order) {
      if (completes(item, first, missing)) {
        out[item] = true;
      } else {
        for (int o : optionsOf[item]) {
          if (o < first) {
            missing[o]--;
          }
        }
      }
    }
    return out;
  }

  private boolean completes(int item, int first, int[] missing) {
    for (int o : optionsOf[item]) {
      if (o >= first) {
        return false;
      }
      if (missing[o] == 1) {
        return true;
      }
    }
    return false;
  }
}
