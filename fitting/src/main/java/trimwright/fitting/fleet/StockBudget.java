package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import trimwright.fitting.fleet.CoverSearch.Aim;
import trimwright.fitting.fleet.CoverSearch.Found;
import trimwright.fitting.fleet.CoverSearch.Question;

/**
 * Which parts to own: a rider is served when every part of some set that fits is owned. One of each
 * part is enough, as one rider at a time is served. Within a budget the choice serves most persons,
 * and among such choices has the least mean mark. Exact unless time runs out.
 *
 * <p>Parts owned already cost nothing and are always there, so that sets are told apart by what
 * would have to be bought alone; of those alike in this the best mark counts for each rider. Parts
 * without a price that are not owned cannot be bought, and sets with one of them are left out.
 */
public final class StockBudget {
  private final FitTable table;
  private final List<String> parts;
  private final double[] prices;
  private final int[][] needs;
  private final CoverSearch serving;
  private final CoverSearch graded;

  /**
   * A choice to be made.
   *
   * @param table riders and hardware
   * @param prices what each part costs, 0 or more; parts without one cannot be bought
   * @param owned parts owned already, which cost nothing
   * @throws IllegalArgumentException if a price is below 0 or not finite
   */
  public StockBudget(FitTable table, Map<String, Double> prices, Set<String> owned) {
    this.table = table;
    prices.forEach(
        (part, price) -> {
          if (!(price >= 0) || Double.isInfinite(price)) {
            throw new IllegalArgumentException(
                "the price of " + part + " must be 0 or more, was " + price);
          }
        });
    Map<String, Integer> numbers = new LinkedHashMap<>();
    needs = new int[table.hardware().size()][];
    for (int set = 0; set < needs.length; set++) {
      List<String> names = table.hardware().get(set);
      if (names.stream().allMatch(name -> owned.contains(name) || prices.containsKey(name))) {
        needs[set] =
            names.stream()
                .filter(name -> !owned.contains(name))
                .mapToInt(name -> numbers.computeIfAbsent(name, absent -> numbers.size()))
                .sorted()
                .toArray();
      }
    }
    parts = List.copyOf(numbers.keySet());
    this.prices = parts.stream().mapToDouble(prices::get).toArray();
    double[] persons = table.riders().stream().mapToDouble(RiderLine::persons).toArray();
    double[][] marks = new double[persons.length][needs.length];
    double[][] served = new double[persons.length][needs.length];
    for (int rider = 0; rider < persons.length; rider++) {
      for (int set = 0; set < needs.length; set++) {
        marks[rider][set] = table.mark(rider, set);
        served[rider][set] = table.fits(rider, set) ? 0 : Double.NaN;
      }
    }
    graded = new CoverSearch(needed(persons, marks).choices(), parts.size());
    serving = new CoverSearch(needed(persons, served).choices(), parts.size());
  }

  private NeededParts needed(double[] persons, double[][] marks) {
    return new NeededParts(persons, prices, needs, marks);
  }

  /** Persons whom any money serves. */
  public int servable() {
    return table.persons() - (int) unserved(everything());
  }

  private boolean[] everything() {
    boolean[] all = new boolean[parts.size()];
    Arrays.fill(all, true);
    return all;
  }

  private double unserved(boolean[] there) {
    return serving.value(new Question(Aim.UNSERVED, List.of(), prices, table.persons()), there);
  }

  /**
   * Chooses within a budget.
   *
   * @param budget money, 0 or more
   * @param allowance how long it may take
   * @throws IllegalArgumentException if the budget is below 0 or not finite
   */
  public StockChoice within(double budget, Allowance allowance) {
    if (!(budget >= 0) || Double.isInfinite(budget)) {
      throw new IllegalArgumentException("the budget must be 0 or more, was " + budget);
    }
    List<Limit> limits = List.of(money(budget));
    boolean[] nothing = new boolean[parts.size()];
    Question most = new Question(Aim.UNSERVED, limits, prices, table.persons());
    Found first = serving.search(most, nothing, table.persons(), allowance);
    double unserved = first.value();
    Question best = new Question(Aim.MARKS, limits, prices, unserved);
    Found second = graded.search(best, first.items(), Double.POSITIVE_INFINITY, allowance);
    List<Given> given = better(given(first.items()), given(second.items()));
    double persons = persons(given);
    Proven served = new Proven(persons, table.persons() - first.bound());
    Proven mean =
        persons == 0
            ? Proven.exactly(0)
            : Proven.of(sum(given) / persons, Math.min(second.bound(), sum(given)) / persons);
    List<String> bought = bought(given);
    return new StockChoice(bought, cost(bought), given, served, mean);
  }

  /** Stopped early, the second search may not have come as far as the first. */
  private List<Given> better(List<Given> one, List<Given> other) {
    boolean isOther =
        persons(other) > persons(one) || persons(other) == persons(one) && sum(other) < sum(one);
    return isOther ? other : one;
  }

  private double persons(List<Given> given) {
    return given.stream().mapToDouble(one -> table.riders().get(one.rider()).persons()).sum();
  }

  private double sum(List<Given> given) {
    return given.stream()
        .mapToDouble(one -> table.riders().get(one.rider()).persons() * one.mark())
        .sum();
  }

  private Limit money(double budget) {
    int[] all = IntStream.range(0, parts.size()).toArray();
    return new Limit(all, prices, budget);
  }

  private List<Given> given(boolean[] there) {
    List<Given> given = new ArrayList<>();
    for (int rider = 0; rider < table.riders().size(); rider++) {
      Given best = null;
      for (int set = 0; set < needs.length; set++) {
        if (table.fits(rider, set)
            && has(there, needs[set])
            && (best == null || table.mark(rider, set) < best.mark())) {
          best = new Given(rider, set, table.mark(rider, set));
        }
      }
      if (best != null) {
        given.add(best);
      }
    }
    return given;
  }

  private static boolean has(boolean[] there, int[] needed) {
    if (needed == null) {
      return false;
    }
    for (int part : needed) {
      if (!there[part]) {
        return false;
      }
    }
    return true;
  }

  private List<String> bought(List<Given> given) {
    Set<Integer> used = new LinkedHashSet<>();
    for (Given one : given) {
      for (int part : needs[one.set()]) {
        used.add(part);
      }
    }
    return used.stream().sorted().map(parts::get).toList();
  }

  private double cost(List<String> bought) {
    return bought.stream().mapToDouble(part -> prices[parts.indexOf(part)]).sum();
  }

  /**
   * The curve of persons served against money: for every number of persons that more money serves
   * the least money that does.
   *
   * @param dearest money above which the curve is not followed; infinite for all of it
   * @param allowance how long it may take
   * @param told hears of each point as it is found
   */
  public StockCurve curve(double dearest, Allowance allowance, Consumer<StockPoint> told) {
    List<StockPoint> points = new ArrayList<>();
    boolean[] all = everything();
    double left = unserved(all);
    double least = unserved(new boolean[parts.size()]);
    points.add(new StockPoint(Proven.exactly(0), (int) (table.persons() - least), List.of()));
    while (least > left && !allowance.isOver()) {
      Question next = new Question(Aim.MONEY, List.of(), prices, least - 1);
      Found found = serving.search(next, all, Double.POSITIVE_INFINITY, allowance);
      Proven money = Proven.of(found.value(), found.bound());
      if (money.bound() > dearest) {
        return new StockCurve(points, true);
      }
      least = unserved(found.items());
      List<String> bought = bought(given(found.items()));
      StockPoint point = new StockPoint(money, (int) (table.persons() - least), bought);
      if (last(points).money().value() == money.value()) {
        points.remove(points.size() - 1);
      }
      points.add(point);
      told.accept(point);
    }
    return new StockCurve(points, least <= left);
  }

  private static StockPoint last(List<StockPoint> points) {
    return points.get(points.size() - 1);
  }

  /** The price of a part that would have to be bought; none where it needs none or has none. */
  public OptionalDouble price(String part) {
    int at = parts.indexOf(part);
    return at < 0 ? OptionalDouble.empty() : OptionalDouble.of(prices[at]);
  }
}
