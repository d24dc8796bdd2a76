package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * A small fleet for many riders, out of parts of which there are so many: it serves most persons,
 * and among the fleets that serve as many it has the least mean mark. Each person rides the set of
 * the fleet that suits best; how many ride at once is not looked at.
 *
 * <p>Exact unless time runs out: a fleet is found by exchange, a bound by Lagrange's relaxation,
 * columns that can be in no better fleet are left out ({@link ColumnBound}, {@link
 * Columns#undominated()}), and what is left is solved in whole numbers ({@link CoverSearch}).
 */
public final class SchoolFleet {
  private final Columns all;
  private final int fleet;
  private final Allowance allowance;

  private SchoolFleet(Columns all, int fleet, Allowance allowance) {
    this.all = all;
    this.fleet = fleet;
    this.allowance = allowance;
  }

  /**
   * Chooses a fleet.
   *
   * @param table riders and hardware
   * @param counts how many there are of each part of the hardware, 0 or more
   * @param fleet how many sets at most, above 0
   * @param allowance how long it may take
   * @throws IllegalArgumentException if no set is wanted, or a part's count is missing or below 0
   */
  public static FleetChoice choose(
      FitTable table, Map<String, Integer> counts, int fleet, Allowance allowance) {
    if (fleet < 1) {
      throw new IllegalArgumentException("a fleet must have 1 set or more, was to have " + fleet);
    }
    for (List<String> parts : table.hardware()) {
      for (String part : parts) {
        if (counts.getOrDefault(part, -1) < 0) {
          throw new IllegalArgumentException(
              "the count of " + part + " must be 0 or more, was " + counts.get(part));
        }
      }
    }
    return new SchoolFleet(Columns.of(table, counts, fleet), fleet, allowance).choose(table);
  }

  private FleetChoice choose(FitTable table) {
    List<Integer> found = new FleetSwaps(all, fleet).better(List.of(), allowance);
    Step first = fewestUnserved(found);
    found = first.found();
    double unserved = unserved(found);
    Proven served =
        new Proven(table.persons() - unserved, table.persons() - Math.min(unserved, first.bound()));
    double persons = served.value();
    if (persons == 0) {
      return choice(table, found, served, Proven.exactly(0), new Step(found, 0, 0), first);
    }
    Step second = leastMarks(found, unserved);
    found = second.found();
    double sum = sum(found);
    // Without the proof that nobody else can be served, marks are bounded all the same: the
    // bound holds for every fleet that leaves as many unserved or fewer.
    Proven mean = Proven.of(sum / persons, Math.min(sum, second.bound()) / persons);
    return choice(table, found, served, mean, second, first);
  }

  /** A step's outcome: what was found, what cannot be passed, how many columns stayed. */
  private record Step(List<Integer> found, double bound, int whole) {}

  private Step fewestUnserved(List<Integer> found) {
    Columns columns = all.served().undominated();
    double known = unserved(found);
    ColumnBound relaxed = ColumnBound.unserved(columns, fleet, known, allowance);
    double bound = Math.ceil(relaxed.bound() - 1e-6);
    if (bound >= known) {
      return new Step(found, known, 0);
    }
    // Persons are whole: a better fleet leaves one fewer unserved, or more.
    Columns left = columns.only(relaxed.below(known - 1));
    CoverSearch.Question question =
        new CoverSearch.Question(
            CoverSearch.Aim.UNSERVED, left.limits(fleet), new double[0], known - 1);
    Step step = whole(left, question, found, known, bound);
    return new Step(
        new FleetSwaps(all, fleet).better(step.found(), allowance), step.bound(), step.whole());
  }

  private Step leastMarks(List<Integer> found, double unserved) {
    Columns columns = all.undominated();
    double known = sum(found);
    ColumnBound relaxed = ColumnBound.marks(columns, fleet, unserved, known, allowance);
    double settled = Proven.SETTLED * Math.max(1, known);
    if (relaxed.bound() >= known - settled) {
      return new Step(found, known, 0);
    }
    Columns left = columns.only(relaxed.below(known - settled));
    CoverSearch.Question question =
        new CoverSearch.Question(
            CoverSearch.Aim.MARKS, left.limits(fleet), new double[0], unserved);
    return whole(left, question, found, known, relaxed.bound());
  }

  /**
   * Searches the columns that are left for a fleet better than the one known. Every fleet that is
   * better holds columns that are left alone, so that the least of what is known and of the
   * search's bound is a bound for all fleets.
   */
  private Step whole(
      Columns left,
      CoverSearch.Question question,
      List<Integer> found,
      double known,
      double lower) {
    CoverSearch search = new CoverSearch(left.choices(), left.count());
    CoverSearch.Found answer = search.search(question, new boolean[left.count()], known, allowance);
    double bound = Math.max(lower, answer.bound());
    if (answer.value() >= known) {
      return new Step(found, bound, left.count());
    }
    List<Integer> better = new ArrayList<>();
    for (int c = 0; c < left.count(); c++) {
      if (answer.items()[c]) {
        better.add(all.columnOf(left.set(c)));
      }
    }
    return new Step(better, Math.min(bound, answer.value()), left.count());
  }

  private double unserved(List<Integer> found) {
    double unserved = 0;
    for (int i = 0; i < all.riders(); i++) {
      unserved += best(i, found) < 0 ? all.persons(i) : 0;
    }
    return unserved;
  }

  private double sum(List<Integer> found) {
    double sum = 0;
    for (int i = 0; i < all.riders(); i++) {
      int best = best(i, found);
      sum += best < 0 ? 0 : all.persons(i) * all.mark(i, best);
    }
    return sum;
  }

  /** The column that suits a rider best, -1 where none fits; the table's order among equals. */
  private int best(int rider, Iterable<Integer> found) {
    int best = -1;
    for (int c : found) {
      if (all.fits(rider, c) && (best < 0 || all.mark(rider, c) < all.mark(rider, best))) {
        best = c;
      }
    }
    return best;
  }

  private FleetChoice choice(
      FitTable table, List<Integer> found, Proven served, Proven mean, Step second, Step first) {
    TreeSet<Integer> used = new TreeSet<>();
    List<Given> given = new ArrayList<>();
    TreeSet<Integer> ordered = new TreeSet<>(found);
    for (int i = 0; i < all.riders(); i++) {
      int best = best(i, ordered);
      if (best >= 0) {
        used.add(all.set(best));
        given.add(new Given(i, all.set(best), table.mark(i, all.set(best))));
      }
    }
    given.sort(Comparator.comparingInt(Given::rider));
    return new FleetChoice(
        List.copyOf(used),
        given,
        served,
        mean,
        new FleetChoice.Work(all.count(), first.whole(), second.whole()));
  }
}
