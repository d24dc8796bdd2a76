package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The hardware sets that a fleet can be put together from, as columns: which scarce parts each
 * takes, and what it is worth to each rider. A part is scarce when there are fewer of it than sets
 * in the fleet; the others never run out.
 */
final class Columns {
  private final double[] persons;
  private final int[] sets;
  private final int[][] parts;
  private final double[][] marks;
  private final int[] supply;

  private Columns(double[] persons, int[] sets, int[][] parts, double[][] marks, int[] supply) {
    this.persons = persons;
    this.sets = sets;
    this.parts = parts;
    this.marks = marks;
    this.supply = supply;
  }

  /**
   * The columns of a table that can be built and fit somebody.
   *
   * @param table riders and hardware
   * @param counts how many there are of each part
   * @param fleet how many sets
   */
  static Columns of(FitTable table, Map<String, Integer> counts, int fleet) {
    Map<String, Integer> scarce = new HashMap<>();
    List<Integer> supply = new ArrayList<>();
    List<Integer> sets = new ArrayList<>();
    List<int[]> parts = new ArrayList<>();
    List<double[]> marks = new ArrayList<>();
    int riders = table.riders().size();
    for (int set = 0; set < table.hardware().size(); set++) {
      List<String> names = table.hardware().get(set);
      double[] mark = new double[riders];
      boolean any = false;
      for (int rider = 0; rider < riders; rider++) {
        mark[rider] = table.mark(rider, set);
        any |= table.fits(rider, set);
      }
      if (any && names.stream().allMatch(name -> counts.get(name) > 0)) {
        sets.add(set);
        marks.add(mark);
        parts.add(
            names.stream()
                .filter(name -> counts.get(name) < fleet)
                .mapToInt(
                    name ->
                        scarce.computeIfAbsent(
                            name,
                            absent -> {
                              supply.add(counts.get(absent));
                              return supply.size() - 1;
                            }))
                .sorted()
                .toArray());
      }
    }
    return new Columns(
        table.riders().stream().mapToDouble(RiderLine::persons).toArray(),
        sets.stream().mapToInt(Integer::intValue).toArray(),
        parts.toArray(int[][]::new),
        marks.toArray(double[][]::new),
        supply.stream().mapToInt(Integer::intValue).toArray());
  }

  /** The same, where only serving counts: every mark 0. */
  Columns served() {
    double[][] flat = new double[marks.length][];
    for (int c = 0; c < flat.length; c++) {
      flat[c] = new double[persons.length];
      for (int rider = 0; rider < persons.length; rider++) {
        flat[c][rider] = fits(rider, c) ? 0 : Double.NaN;
      }
    }
    return new Columns(persons, sets, parts, flat, supply);
  }

  /**
   * The same without columns that another one dominates: one of the same scarce parts whose mark is
   * as good for every rider. Proof: in any fleet put the other in its place, or leave it out where
   * the other is there already. The scarce parts taken are the same or fewer, the rest never run
   * out, and no rider's best mark gets worse.
   */
  Columns undominated() {
    Map<List<Integer>, List<Integer>> alike = new HashMap<>();
    for (int c = 0; c < count(); c++) {
      List<Integer> key = new ArrayList<>();
      for (int part : parts[c]) {
        key.add(part);
      }
      List<Integer> kept = alike.computeIfAbsent(key, absent -> new ArrayList<>());
      int column = c;
      if (kept.stream().noneMatch(other -> dominates(other, column))) {
        kept.removeIf(other -> dominates(column, other));
        kept.add(column);
      }
    }
    boolean[] keep = new boolean[count()];
    alike.values().forEach(kept -> kept.forEach(c -> keep[c] = true));
    return only(keep);
  }

  private boolean dominates(int one, int other) {
    for (int rider = 0; rider < persons.length; rider++) {
      if (fits(rider, other) && !(marks[one][rider] <= marks[other][rider])) {
        return false;
      }
    }
    return true;
  }

  /** Some of the columns. */
  Columns only(boolean[] keep) {
    List<Integer> kept = new ArrayList<>();
    for (int c = 0; c < keep.length; c++) {
      if (keep[c]) {
        kept.add(c);
      }
    }
    return new Columns(
        persons,
        kept.stream().mapToInt(c -> sets[c]).toArray(),
        kept.stream().map(c -> parts[c]).toArray(int[][]::new),
        kept.stream().map(c -> marks[c]).toArray(double[][]::new),
        supply);
  }

  int count() {
    return sets.length;
  }

  int riders() {
    return persons.length;
  }

  double persons(int rider) {
    return persons[rider];
  }

  /** A column's place in the table. */
  int set(int column) {
    return sets[column];
  }

  /** The column of a set of the table, -1 where it has none. */
  int columnOf(int set) {
    for (int c = 0; c < sets.length; c++) {
      if (sets[c] == set) {
        return c;
      }
    }
    return -1;
  }

  /** The scarce parts of a column. */
  int[] parts(int column) {
    return parts[column];
  }

  int scarce() {
    return supply.length;
  }

  /** How many there are of a scarce part. */
  int supply(int part) {
    return supply[part];
  }

  double mark(int rider, int column) {
    return marks[column][rider];
  }

  boolean fits(int rider, int column) {
    return !Double.isNaN(marks[column][rider]);
  }

  /** The choices of each rider where each column is an item. */
  List<RiderChoices> choices() {
    List<RiderChoices> choices = new ArrayList<>();
    for (int rider = 0; rider < persons.length; rider++) {
      List<RiderChoices.Option> options = new ArrayList<>();
      for (int c = 0; c < count(); c++) {
        if (fits(rider, c)) {
          options.add(new RiderChoices.Option(List.of(c), mark(rider, c)));
        }
      }
      choices.add(new RiderChoices(persons[rider], options, count()));
    }
    return choices;
  }

  /** The limits of a fleet where each column is an item. */
  List<Limit> limits(int fleet) {
    List<Limit> limits = new ArrayList<>();
    limits.add(limit(IntStream.range(0, count()).toArray(), fleet));
    for (int part = 0; part < supply.length; part++) {
      List<Integer> with = new ArrayList<>();
      for (int c = 0; c < count(); c++) {
        for (int of : parts[c]) {
          if (of == part) {
            with.add(c);
          }
        }
      }
      if (with.size() > supply[part]) {
        limits.add(limit(with.stream().mapToInt(Integer::intValue).toArray(), supply[part]));
      }
    }
    return limits;
  }

  private static Limit limit(int[] columns, int most) {
    double[] ones = new double[columns.length];
    Arrays.fill(ones, 1);
    return new Limit(columns, ones, most);
  }
}
