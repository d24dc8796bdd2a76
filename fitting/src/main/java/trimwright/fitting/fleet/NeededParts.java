package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What riders need to be bought: options, each some parts with a mark for every rider, without
 * parts that another one can stand for.
 *
 * <p>A part is left out when another costs no more and can stand in its place everywhere: every
 * option with the one is an option with the other instead, with a mark as good for every rider.
 * Proof: in any choice buy the other instead (once is enough). It costs no more, and every option
 * that was there is there with the other, or was there before. Parts are left out one after
 * another, each by the proof over what is left, so that two that can stand for each other do not
 * both go.
 */
final class NeededParts {
  private final double[] prices;
  private final double[] persons;
  private final Map<List<Integer>, double[]> options = new LinkedHashMap<>();
  private final boolean[] dropped;

  /**
   * Merges the sets that need the same and leaves parts out.
   *
   * @param persons of each rider
   * @param prices of each part
   * @param needs the parts that each set needs, ascending; null for sets that cannot be had
   * @param marks for each rider the mark on each set, NaN where it does not fit
   */
  NeededParts(double[] persons, double[] prices, int[][] needs, double[][] marks) {
    this.prices = prices;
    this.persons = persons;
    dropped = new boolean[prices.length];
    for (int set = 0; set < needs.length; set++) {
      if (needs[set] != null) {
        merge(needs[set], marks, set);
      }
    }
    boolean any = true;
    while (any) {
      any = false;
      for (int part = 0; part < prices.length; part++) {
        if (!dropped[part] && isReplaced(part)) {
          drop(part);
          any = true;
        }
      }
    }
  }

  private void merge(int[] needed, double[][] marks, int set) {
    double[] own = null;
    for (int rider = 0; rider < persons.length; rider++) {
      double mark = marks[rider][set];
      if (!Double.isNaN(mark)) {
        if (own == null) {
          own = options.computeIfAbsent(listed(needed), absent -> nothing());
        }
        own[rider] = Double.isNaN(own[rider]) ? mark : Math.min(own[rider], mark);
      }
    }
  }

  private double[] nothing() {
    double[] marks = new double[persons.length];
    Arrays.fill(marks, Double.NaN);
    return marks;
  }

  private static List<Integer> listed(int[] parts) {
    return Arrays.stream(parts).boxed().toList();
  }

  private boolean isReplaced(int part) {
    List<List<Integer>> with =
        options.keySet().stream().filter(option -> option.contains(part)).toList();
    for (int other = 0; other < prices.length; other++) {
      if (other != part && !dropped[other] && prices[other] <= prices[part]) {
        int by = other;
        if (with.stream().allMatch(option -> stands(option, part, by))) {
          return true;
        }
      }
    }
    return with.isEmpty();
  }

  private boolean stands(List<Integer> option, int part, int other) {
    List<Integer> instead = new ArrayList<>(option);
    instead.remove(Integer.valueOf(part));
    if (!instead.contains(other)) {
      instead.add(other);
    }
    instead.sort(null);
    double[] there = options.get(instead);
    if (there == null) {
      return false;
    }
    double[] own = options.get(option);
    for (int rider = 0; rider < own.length; rider++) {
      if (!Double.isNaN(own[rider]) && !(there[rider] <= own[rider])) {
        return false;
      }
    }
    return true;
  }

  private void drop(int part) {
    dropped[part] = true;
    options.keySet().removeIf(option -> option.contains(part));
  }

  /** Whether a part was left out. */
  boolean isDropped(int part) {
    return dropped[part];
  }

  /** What serves each rider, over all parts. */
  List<RiderChoices> choices() {
    List<RiderChoices> choices = new ArrayList<>();
    for (int rider = 0; rider < persons.length; rider++) {
      List<RiderChoices.Option> own = new ArrayList<>();
      int of = rider;
      options.forEach(
          (option, marks) -> {
            if (!Double.isNaN(marks[of])) {
              own.add(new RiderChoices.Option(option, marks[of]));
            }
          });
      choices.add(new RiderChoices(persons[rider], own, prices.length));
    }
    return choices;
  }
}
