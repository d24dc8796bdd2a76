package trimwright.desk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.FleetAnswer;
import trimwright.exchange.words.SharedCard;
import trimwright.fitting.fleet.FitTable;
import trimwright.fitting.fleet.FleetChoice;
import trimwright.fitting.fleet.Given;
import trimwright.fitting.fleet.Household;
import trimwright.fitting.fleet.Proven;
import trimwright.fitting.fleet.SchoolFleet;
import trimwright.fitting.fleet.SharedSet;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockPart;

/**
 * One set for a household, a small fleet for a school. Chosen by tables; the cards of the choice
 * are solved in full, and the choice is made again with what that says, until every card of it
 * holds or the rounds are used up.
 */
public final class FleetStudy {
  /** How often a choice is made anew after its cards were solved in full. */
  static final int ROUNDS = 12;

  private final RidersFile riders;
  private final StockFile stock;
  private final List<StockCases> cases;
  private final SharedFits fits;
  private final SharedProgress progress;

  private FleetStudy(
      RidersFile riders,
      StockFile stock,
      List<StockCases> cases,
      SharedFits fits,
      SharedProgress progress) {
    this.riders = riders;
    this.stock = stock;
    this.cases = cases;
    this.fits = fits;
    this.progress = progress;
  }

  /**
   * Chooses sets.
   *
   * @param riders who shares
   * @param stock what there is
   * @param parts the stock's parts as they are computed with, see {@link LayeredStock}
   * @param sets how many sets at most; 1 is a household's
   * @param time how long choices may take; looking through the stock comes before
   * @param pairs tables of pairs of wings
   * @param workers who works
   * @param progress told how far it is
   * @throws CancellationException if it was stopped
   * @throws IllegalArgumentException if a rider's ride is possible on no setup of the stock
   */
  public static FleetAnswer find(
      RidersFile riders,
      StockFile stock,
      Stock parts,
      int sets,
      Duration time,
      PairTables pairs,
      Workers workers,
      SharedProgress progress) {
    List<StockCases> cases = SharedFits.cases(riders, stock);
    SharedFits fits = new SharedFits(riders, cases, parts, pairs, workers, progress);
    FleetStudy study = new FleetStudy(riders, stock, cases, fits, progress);
    Deadline deadline = new Deadline(time, progress);
    return sets == 1 ? study.household() : study.school(parts, sets, deadline);
  }

  private FleetAnswer household() {
    List<Given> given = List.of();
    Optional<SharedSet> best = Optional.empty();
    boolean open = true;
    for (int round = 0; round < ROUNDS && open; round++) {
      FitTable table = fits.table();
      best = Household.best(table, 1).stream().findFirst();
      given = best.map(shared -> given(table, shared.set())).orElse(List.of());
      open = fits.confirm(given);
    }
    FitTable table = fits.table();
    if (open) {
      // The last cards solved may have fallen: what stands of the set is shown.
      best = best.map(shared -> again(table, shared.set()));
      given = best.map(shared -> given(table, shared.set())).orElse(List.of());
    }
    List<Integer> shown = best.map(shared -> List.of(shared.set())).orElse(List.of());
    double persons = best.map(SharedSet::persons).orElse(0);
    double mean = best.map(SharedSet::mean).orElse(0.0);
    boolean settled = !open;
    SharedSet most = Household.best(table, 1).stream().findFirst().orElse(null);
    return answer(
        1,
        shown,
        given,
        new Proven(persons, settled || most == null ? persons : most.persons()),
        best.map(SharedSet::worst).orElse(0.0),
        new Proven(mean, settled ? mean : 0));
  }

  private static SharedSet again(FitTable table, int set) {
    return Household.best(table, Integer.MAX_VALUE).stream()
        .filter(shared -> shared.set() == set)
        .findFirst()
        .orElse(new SharedSet(set, 0, 0, 0));
  }

  private static List<Given> given(FitTable table, int set) {
    List<Given> given = new ArrayList<>();
    for (int rider = 0; rider < table.riders().size(); rider++) {
      if (table.fits(rider, set)) {
        given.add(new Given(rider, set, table.mark(rider, set)));
      }
    }
    return given;
  }

  private FleetAnswer school(Stock parts, int sets, Deadline deadline) {
    Map<String, Integer> counts = counts(parts);
    FleetChoice choice = null;
    boolean open = true;
    for (int round = 0; round < ROUNDS && open; round++) {
      choice = SchoolFleet.choose(fits.table(), counts, sets, deadline);
      stop();
      progress.found(
          "Persons served by tables and cards so far: " + (long) choice.served().value());
      open = fits.confirm(choice.given());
    }
    FitTable table = fits.table();
    List<Given> given = new ArrayList<>();
    for (Given one : choice.given()) {
      if (table.fits(one.rider(), one.set())) {
        given.add(new Given(one.rider(), one.set(), table.mark(one.rider(), one.set())));
      }
    }
    double persons = 0;
    double sum = 0;
    double worst = 0;
    for (Given one : given) {
      int of = table.riders().get(one.rider()).persons();
      persons += of;
      sum += of * one.mark();
      worst = Math.max(worst, one.mark());
    }
    double mean = persons == 0 ? 0 : sum / persons;
    // A bound over marks that are known too low is one over the true ones too.
    Proven served = new Proven(persons, Math.max(persons, choice.served().bound()));
    boolean same = persons == choice.served().value();
    return answer(
        sets,
        choice.sets(),
        given,
        served,
        worst,
        new Proven(mean, same ? Math.min(mean, choice.mean().bound()) : 0));
  }

  private void stop() {
    if (progress.isStopped()) {
      throw new CancellationException("stopped");
    }
  }

  /** How many there are of each part that is there. */
  static Map<String, Integer> counts(Stock parts) {
    Map<String, Integer> counts = new HashMap<>();
    for (PartKind kind : PartKind.values()) {
      for (StockPart<?> part : parts.list(kind)) {
        counts.put(part.id(), part.holding().count());
      }
    }
    return counts;
  }

  private FleetAnswer answer(
      int wanted,
      List<Integer> shown,
      List<Given> given,
      Proven served,
      double worst,
      Proven mean) {
    List<SharedCard> alone = alone();
    return new FleetAnswer(
        riders,
        stock,
        cases.stream().map(StockCases::base).toList(),
        wanted,
        fits.table().hardware().size(),
        shown.stream().map(fits::parts).toList(),
        fits.cards(given, shown),
        alone,
        served,
        worst,
        mean,
        fits.looked(),
        fits.fallen());
  }

  /** The best set of each rider alone, solved in full until it holds or rounds are used up. */
  private List<SharedCard> alone() {
    List<Given> alone = Household.alone(fits.table());
    for (int round = 0; round < ROUNDS && fits.confirm(alone); round++) {
      alone = Household.alone(fits.table());
    }
    FitTable table = fits.table();
    List<Given> holding = alone.stream().filter(one -> table.fits(one.rider(), one.set())).toList();
    return fits.cards(holding, List.of());
  }
}
