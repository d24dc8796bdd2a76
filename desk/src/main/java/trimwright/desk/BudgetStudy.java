package trimwright.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.BudgetAnswer;
import trimwright.fitting.fleet.FitTable;
import trimwright.fitting.fleet.Given;
import trimwright.fitting.fleet.Proven;
import trimwright.fitting.fleet.StockBudget;
import trimwright.fitting.fleet.StockChoice;
import trimwright.fitting.fleet.StockCurve;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockPart;

/**
 * What to own for many riders within a budget. Chosen by tables; the cards of the choice are solved
 * in full, and the choice is made again with what that says. The curve of money is by tables.
 */
public final class BudgetStudy {
  private static final int ROUNDS = 6;

  private BudgetStudy() {}

  /**
   * Chooses parts.
   *
   * @param riders whom to serve
   * @param stock what there is to choose from
   * @param parts its parts as they are computed with, see {@link LayeredStock}
   * @param budget money
   * @param owned ids of parts owned already
   * @param time how long the choice may take, and as long again the curve; looking through the
   *     stock comes before
   * @param pairs tables of pairs of wings
   * @param workers who works
   * @param progress told how far it is
   * @throws CancellationException if it was stopped
   * @throws IllegalArgumentException if a rider's ride is possible on no setup of the stock, or a
   *     part owned is not in it
   */
  public static BudgetAnswer find(
      RidersFile riders,
      StockFile stock,
      Stock parts,
      double budget,
      Set<String> owned,
      Duration time,
      PairTables pairs,
      Workers workers,
      SharedProgress progress) {
    Map<String, Double> prices = new HashMap<>();
    Set<String> unpriced = new TreeSet<>();
    Set<String> unknown = new TreeSet<>(owned);
    for (PartKind kind : PartKind.values()) {
      for (StockPart<?> part : parts.list(kind)) {
        unknown.remove(part.id());
        part.holding().price().ifPresent(price -> prices.put(part.id(), price));
        boolean counts = kind != PartKind.SHIM && part.holding().isThere();
        if (counts && part.holding().price().isEmpty() && !owned.contains(part.id())) {
          unpriced.add(part.id());
        }
      }
    }
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException("the stock has no part " + unknown.iterator().next());
    }
    List<StockCases> cases = SharedFits.cases(riders, stock);
    SharedFits fits = new SharedFits(riders, cases, parts, pairs, workers, progress);
    StockCurve curve =
        new StockBudget(fits.table(), prices, owned)
            .curve(
                Double.POSITIVE_INFINITY,
                new Deadline(time, progress),
                point ->
                    progress.found(
                        "Persons served for " + point.money().value() + ": " + point.persons()));
    Deadline deadline = new Deadline(time, progress);
    StockChoice choice = null;
    boolean open = true;
    for (int round = 0; round < ROUNDS && open; round++) {
      choice = new StockBudget(fits.table(), prices, owned).within(budget, deadline);
      if (progress.isStopped()) {
        throw new CancellationException("stopped");
      }
      progress.found(
          "Persons served by tables and cards so far: " + (long) choice.served().value());
      open = fits.confirm(choice.given());
    }
    StockChoice standing = open ? standing(choice, fits.table()) : choice;
    List<Integer> shown = standing.given().stream().map(Given::set).distinct().sorted().toList();
    return new BudgetAnswer(
        riders,
        stock,
        cases.stream().map(StockCases::base).toList(),
        budget,
        owned.stream().sorted().toList(),
        List.copyOf(unpriced),
        fits.table().hardware().size(),
        standing,
        shown.stream().map(fits::parts).toList(),
        fits.cards(standing.given(), shown),
        curve,
        fits.looked(),
        fits.fallen());
  }

  /** What is left of a choice of which some cards have fallen; its bounds stay. */
  private static StockChoice standing(StockChoice choice, FitTable table) {
    List<Given> given = new ArrayList<>();
    double persons = 0;
    double sum = 0;
    for (Given one : choice.given()) {
      if (table.fits(one.rider(), one.set())) {
        double mark = table.mark(one.rider(), one.set());
        given.add(new Given(one.rider(), one.set(), mark));
        int of = table.riders().get(one.rider()).persons();
        persons += of;
        sum += of * mark;
      }
    }
    double mean = persons == 0 ? 0 : sum / persons;
    boolean same = persons == choice.served().value();
    return new StockChoice(
        choice.bought(),
        choice.money(),
        given,
        new Proven(persons, Math.max(persons, choice.served().bound())),
        new Proven(mean, same ? Math.min(mean, choice.mean().bound()) : 0));
  }
}
