package trimwright.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.SharedCard;
import trimwright.fitting.fleet.FitTable;
import trimwright.fitting.fleet.Given;
import trimwright.fitting.fleet.RiderLine;
import trimwright.fitting.judge.FullJudge;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.match.Progress;
import trimwright.fitting.match.Screen;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockSetup;
import trimwright.kernel.envelope.Envelope;

/**
 * Riders by hardware: by tables for every set of a stock, by the full solution for what is looked
 * at. A mark by tables is a lower bound on that of the same card by the full solution, but for what
 * tables miss: manners and falls are known to the full solution alone.
 */
final class SharedFits {
  private final RidersFile riders;
  private final HardwareList hardware;
  private final List<Cards> cards = new ArrayList<>();
  private final double[][] marks;
  private final Map<Long, Judged> judged = new HashMap<>();
  private final KeptTables tables = new KeptTables();
  private final SharedProgress progress;
  private int fallen;

  /**
   * Looks through a stock for every rider.
   *
   * @param cases each rider's cases on the stock
   * @param parts the stock's parts as they are computed with
   * @throws CancellationException if it was stopped
   */
  SharedFits(
      RidersFile riders,
      List<StockCases> cases,
      Stock parts,
      PairTables pairs,
      Workers workers,
      SharedProgress progress) {
    this.riders = riders;
    this.progress = progress;
    Propulsion propulsion = cases.get(0).space().propulsion();
    SetupSpace space = SetupSpace.of(parts, propulsion);
    hardware = new HardwareList(space);
    marks = new double[cases.size()][];
    for (int rider = 0; rider < marks.length; rider++) {
      StockCases own = cases.get(rider);
      double wished = own.base().rideCase().rider().wishedSpeed();
      RideAsked asked =
          RiderAsked.of(own.base(), RideSpan.about(wished), RideAsked.USUAL_REACH, Map.of());
      Screen screen = new Screen(space, new QuickJudge(asked), own.waterTemperature(), pairs);
      List<Cards.Best> found =
          screen.run(() -> new Cards.Best(hardware), workers, stopping(progress));
      cards.add(Cards.Best.together(own, asked, found));
      marks[rider] = cards.get(rider).shortfalls();
      progress.riders(rider + 1, marks.length);
    }
  }

  private static Progress stopping(SharedProgress progress) {
    return new Progress() {
      @Override
      public void at(Stage stage, int done, int all) {
        // Riders are told, not pairs of wings.
      }

      @Override
      public boolean isStopped() {
        return progress.isStopped();
      }
    };
  }

  /**
   * Every rider's cases on a stock.
   *
   * @throws IllegalArgumentException if a rider's ride is possible on no setup, with the reason
   */
  static List<StockCases> cases(RidersFile riders, StockFile stock) {
    List<StockCases> cases = new ArrayList<>();
    for (int line = 0; line < riders.lines().size(); line++) {
      var reading = riders.cases(line, stock);
      if (reading.findValue().isEmpty()) {
        throw new IllegalArgumentException(
            riders.lines().get(line).id() + ": " + reading.problems().get(0).message());
      }
      cases.add(reading.findValue().get());
    }
    return cases;
  }

  /** The table as it is known now. */
  FitTable table() {
    List<RiderLine> lines =
        riders.lines().stream().map(line -> new RiderLine(line.id(), line.persons())).toList();
    return new FitTable(lines, hardware.sets().stream().map(SharedHardware::ids).toList(), marks);
  }

  /** Whether a rider's card on a set was solved in full and holds. */
  boolean isConfirmed(int rider, int set) {
    return judged.containsKey(key(rider, set));
  }

  /** Cards that passed the tables and fell at the full solution. */
  int fallen() {
    return fallen;
  }

  /** Cards that were solved in full. */
  int looked() {
    return judged.size() + fallen;
  }

  private static long key(int rider, int set) {
    return ((long) rider << 32) + set;
  }

  /**
   * Solves cards in full that were not yet. A card that holds gets the mark of the full solution;
   * one that falls no longer fits.
   *
   * @return whether any was solved
   */
  boolean confirm(List<Given> given) {
    boolean any = false;
    for (Given one : given) {
      if (!isConfirmed(one.rider(), one.set())) {
        confirm(one.rider(), one.set());
        any = true;
      }
    }
    return any;
  }

  private void confirm(int rider, int set) {
    if (progress.isStopped()) {
      throw new CancellationException("stopped");
    }
    Cards own = cards.get(rider);
    StockSetup setup = own.setup(set).orElseThrow();
    FullJudge judge = new FullJudge(own.asked(), tables);
    Judged full =
        judge.whole(
            own.asked().on(setup.setup(own.cases().waterTemperature()), own.feet(set)),
            ratings(own, setup),
            progress::isStopped);
    if (full.passes()) {
      judged.put(key(rider, set), full);
      marks[rider][set] = own.asked().wishes().shortfall(full.values());
    } else {
      fallen++;
      marks[rider][set] = Double.NaN;
    }
    progress.confirmed(looked());
  }

  private static Envelope.Ratings ratings(Cards own, StockSetup setup) {
    return own.cases()
        .caseFile(setup)
        .findValue()
        .map(EnvelopeStudy::ratings)
        .orElse(Envelope.Ratings.NONE);
  }

  /** The names of a set's parts. */
  List<String> parts(int set) {
    return hardware.sets().get(set).ids();
  }

  /**
   * Cards of all riders.
   *
   * @param given who is given what
   * @param shown the sets shown, in their order
   */
  List<SharedCard> cards(List<Given> given, List<Integer> shown) {
    List<SharedCard> all = new ArrayList<>();
    for (int rider = 0; rider < cards.size(); rider++) {
      int of = rider;
      Optional<Given> own = given.stream().filter(one -> one.rider() == of).findFirst();
      all.add(card(rider, own, shown));
    }
    return all;
  }

  private SharedCard card(int rider, Optional<Given> given, List<Integer> shown) {
    RidersFile.Line line = riders.lines().get(rider);
    Cards own = cards.get(rider);
    if (given.isEmpty()) {
      return new SharedCard(
          line.id(),
          line.persons(),
          own.asked(),
          -1,
          Optional.empty(),
          0,
          Double.NaN,
          Optional.empty());
    }
    int set = given.get().set();
    return new SharedCard(
        line.id(),
        line.persons(),
        own.asked(),
        shown.indexOf(set),
        own.setup(set),
        own.feet(set),
        own.shortfalls()[set],
        Optional.ofNullable(judged.get(key(rider, set))));
  }
}
