package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.QuickRide;
import trimwright.fitting.judge.QuickRig;
import trimwright.fitting.judge.ShimLoads;
import trimwright.fitting.judge.TableCase;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;

/**
 * Looks through every setup of a space by tables. Nothing of it stays in memory but the pair of
 * wings at hand.
 */
public final class Screen {
  private final SetupSpace space;
  private final QuickJudge judge;
  private final double waterTemperature;
  private final PairTables tables;
  private final List<BoardSet> uppers;
  private final List<WingPair> pairs;

  /**
   * A screen.
   *
   * @param space the setups
   * @param judge what is asked of each
   * @param waterTemperature for batteries as warm as the water [K]
   * @param tables where tables of pairs come from; asked by several threads
   */
  public Screen(SetupSpace space, QuickJudge judge, double waterTemperature, PairTables tables) {
    this.space = space;
    this.judge = judge;
    this.waterTemperature = waterTemperature;
    this.tables = tables;
    uppers = space.boardSets().toList();
    pairs =
        WingPair.listOf(space).stream()
            .filter(pair -> uppers.stream().anyMatch(upper -> fits(upper, pair)))
            .toList();
  }

  private static boolean fits(BoardSet upper, WingPair pair) {
    return upper.mast().fits(pair.fuselage(), Joint.MAST_FUSELAGE);
  }

  /** The setups looked through. */
  public SetupSpace space() {
    return space;
  }

  /** What is asked of each. */
  public QuickJudge judge() {
    return judge;
  }

  /** The pairs of wings that some board takes. */
  public List<WingPair> pairs() {
    return pairs;
  }

  /**
   * Looks through all setups.
   *
   * @param finds makes what takes the findings, one for each thread
   * @param workers who works
   * @param progress told after each pair of wings
   * @return what the threads found, each in no special order
   * @param <F> what takes the findings
   * @throws CancellationException if it was stopped
   */
  public <F extends Finds> List<F> run(Supplier<F> finds, Workers workers, Progress progress) {
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    List<F> all = new ArrayList<>();
    List<Runnable> tasks = new ArrayList<>();
    for (int i = 0; i < workers.threads(); i++) {
      F own = finds.get();
      all.add(own);
      tasks.add(
          () -> {
            int index = next.getAndIncrement();
            while (index < pairs.size()) {
              if (progress.isStopped() || Thread.currentThread().isInterrupted()) {
                throw new CancellationException("stopped");
              }
              look(pairs.get(index), own);
              progress.at(Progress.Stage.SCREEN, done.incrementAndGet(), pairs.size());
              index = next.getAndIncrement();
            }
          });
    }
    workers.run(tasks);
    return all;
  }

  /**
   * Looks through the setups of one pair of wings.
   *
   * @param pair the pair
   * @param finds takes the findings
   */
  public void look(WingPair pair, Finds finds) {
    List<ShimLoads> loads = new ArrayList<>();
    for (BoardSet upper : uppers) {
      if (fits(upper, pair)) {
        RideCase middle = middle(upper, pair);
        Optional<QuickRig> rig = judge.rig(middle);
        if (rig.isPresent() && loads.isEmpty()) {
          PairTable table = tables.of(new Craft(TableCase.of(middle)));
          for (Optional<StockPart<Shim>> shim : pair.shims()) {
            loads.add(judge.loads(table, pair.with(shim).shimAngle()));
          }
        }
        for (int i = 0; i < pair.shims().size(); i++) {
          FoilSet foil = pair.with(pair.shims().get(i));
          finds.take(
              upper, foil, rig.isPresent() ? places(upper, rig.get(), loads.get(i)) : none(upper));
        }
      }
    }
  }

  private RideCase middle(BoardSet upper, WingPair pair) {
    StockSetup setup = new StockSetup(upper, pair.with(Optional.empty()), 0);
    return judge.asked().on(setup.setup(waterTemperature), 0);
  }

  private List<Placement> places(BoardSet upper, QuickRig rig, ShimLoads loads) {
    QuickRide ride = judge.ride(rig, loads);
    return upper
        .board()
        .piece()
        .track()
        .places()
        .mapToObj(place -> judge.place(ride, place))
        .collect(Collectors.toList());
  }

  private static List<Placement> none(BoardSet upper) {
    return upper
        .board()
        .piece()
        .track()
        .places()
        .mapToObj(
            place ->
                new Placement(
                    place,
                    0,
                    Optional.of(Ground.NO_ROOM),
                    WishValues.none(),
                    Double.POSITIVE_INFINITY))
        .toList();
  }
}
