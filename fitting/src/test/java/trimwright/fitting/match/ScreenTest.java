package trimwright.fitting.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.TableCase;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.quick.QuickBalance;
import trimwright.kernel.quick.QuickCase;
import trimwright.kernel.quick.QuickTrim;
import trimwright.kernel.rig.BoardHeight;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.NoTrimReason;

/**
 * The screen against a loop over every setup, place and notch that knows nothing of its shortcuts.
 */
class ScreenTest {
  /** Rounding of some dozen operations. */
  private static final double ROUNDING = 1e-9;

  private static Screen screen(Stock stock, RideAsked asked) {
    return new Screen(
        ExampleStock.space(stock),
        new QuickJudge(asked),
        ExampleStock.TEMPERATURE,
        ExampleStock.TABLES);
  }

  private static List<RideAsked> riders() {
    return List.of(
        ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING),
        ExampleStock.asked(ExampleStock.rider(104, 21), RidingKind.LINKING),
        ExampleStock.asked(ExampleStock.rider(52, 30), RidingKind.CARVING));
  }

  /** What the loop finds of one setup. */
  private record Naive(Optional<Ground> ground, double shortfall, double feet) {}

  private static String name(StockSetup setup) {
    StringBuilder name = new StringBuilder();
    setup.parts().map(StockPart::id).forEach(id -> name.append(id).append(' '));
    return name.append(Math.round(1e6 * setup.track())).toString();
  }

  @Test
  void everySetupFallsOrPassesAsInALoop() {
    Stock stock = ExampleStock.stock();
    int passed = 0;
    int fell = 0;
    for (RideAsked asked : riders()) {
      Map<String, Placement> screened = new HashMap<>();
      screen(stock, asked)
          .run(
              () ->
                  (upper, foil, placements) -> {
                    for (Placement placement : placements) {
                      screened.put(name(new StockSetup(upper, foil, placement.track())), placement);
                    }
                  },
              new Workers(1, false),
              Progress.NONE);
      List<StockSetup> setups = ExampleStock.space(stock).setups().toList();
      assertThat(screened).hasSameSizeAs(setups);
      for (StockSetup setup : setups) {
        Naive naive = loop(setup, asked);
        Placement placement = screened.get(name(setup));
        assertThat(placement.ground()).as(name(setup)).isEqualTo(naive.ground);
        if (naive.ground.isEmpty()) {
          passed++;
          assertThat(placement.shortfall()).isCloseTo(naive.shortfall, within(ROUNDING));
          assertThat(placement.feet()).isCloseTo(naive.feet, within(ROUNDING));
        } else {
          fell++;
        }
      }
    }
    assertThat(passed).isGreaterThan(100);
    assertThat(fell).isGreaterThan(100);
  }

  /** Every notch of the feet on its own craft, mast where the setup has it. */
  private static Naive loop(StockSetup setup, RideAsked asked) {
    Naive best = null;
    for (int notch = -asked.notches(); notch <= asked.notches(); notch++) {
      double feet = notch * RideAsked.NOTCH;
      Naive here = notch(asked.on(setup.setup(ExampleStock.TEMPERATURE), feet), setup, asked, feet);
      if (best == null || better(here, best)) {
        best = here;
      }
    }
    return best;
  }

  /** Passing before falling; the later ground before the earlier; then the least moved. */
  private static boolean better(Naive a, Naive b) {
    if (a.ground.isPresent() || b.ground.isPresent()) {
      int rankA = a.ground.map(Ground::ordinal).orElse(99);
      int rankB = b.ground.map(Ground::ordinal).orElse(99);
      return rankA > rankB;
    }
    double difference = a.shortfall - b.shortfall;
    return difference < -1e-11
        || Math.abs(difference) <= 1e-11 && Math.abs(a.feet) < Math.abs(b.feet) - ROUNDING;
  }

  private static Naive notch(RideCase c, StockSetup setup, RideAsked asked, double feet) {
    double axisDepth = c.immersion() + c.setup().frontWing().height();
    if (axisDepth >= c.setup().mast().length()
        || c.setup().drive().get().heightAboveFuselage() >= axisDepth) {
      return new Naive(Optional.of(Ground.NO_ROOM), Double.NaN, 0);
    }
    Craft craft = new Craft(c);
    PairTable table = ExampleStock.TABLES.of(new Craft(TableCase.of(c)));
    QuickCase quick = new QuickCase(craft);
    List<Double> speeds = new ArrayList<>();
    asked.span().stream().forEach(speeds::add);
    speeds.add(c.rider().wishedSpeed());
    List<Ground> grounds = new ArrayList<>();
    List<QuickBalance> balances = new ArrayList<>();
    RideLimits limits = c.limits();
    for (double speed : speeds) {
      QuickTrim trim = quick.at(speed).trim(table.at(speed, setup.foil().shimAngle()));
      trim.reason().ifPresent(reason -> grounds.add(ground(reason)));
      trim.balance().ifPresent(balances::add);
      boolean balanced =
          trim.reason().isEmpty() || trim.reason().get() == NoTrimReason.FEET_CANNOT_REACH;
      if (balanced) {
        QuickBalance b = trim.balance().orElseThrow();
        if (limits.breaks(RideLimit.STALL_MARGIN, b.stallMargin())) {
          grounds.add(Ground.STALL_MARGIN);
        }
        if (limits.breaks(RideLimit.LEAST_FOOT_SHARE, b.footShare() + 1e-12)
            || limits.breaks(RideLimit.MOST_FOOT_SHARE, b.footShare() - 1e-12)) {
          grounds.add(Ground.FEET);
        }
        if (limits.breaks(RideLimit.PITCH, Math.abs(b.pitch() + c.setup().mast().baseAngle()))) {
          grounds.add(Ground.PITCH);
        }
        if (BoardHeight.aboveCrests(craft, b.pitch()) < limits.of(RideLimit.BOARD_CLEARANCE)) {
          grounds.add(Ground.BOARD_CLEARANCE);
        }
      }
    }
    if (grounds.isEmpty()) {
      for (int i = 0; i < balances.size(); i++) {
        double margin =
            quick
                .at(speeds.get(i))
                .foilMargin(table.at(speeds.get(i), setup.foil().shimAngle()), balances.get(i));
        if (limits.breaks(RideLimit.STATIC_MARGIN, margin)) {
          grounds.add(Ground.STATIC_MARGIN);
        }
      }
    }
    Optional<Ground> first = grounds.stream().min(Comparator.naturalOrder());
    return first.isPresent()
        ? new Naive(first, Double.NaN, feet)
        : new Naive(first, shortfall(c, asked, balances, quick, table, setup, feet), feet);
  }

  private static Ground ground(NoTrimReason reason) {
    return switch (reason) {
      case TOO_SLOW -> Ground.TOO_SLOW;
      case STALLED -> Ground.STALLED;
      case THRUST_SHORT -> Ground.THRUST;
      case FEET_CANNOT_REACH -> Ground.FEET;
    };
  }

  private static double shortfall(
      RideCase c,
      RideAsked asked,
      List<QuickBalance> balances,
      QuickCase quick,
      PairTable table,
      StockSetup setup,
      double feet) {
    int count = asked.span().count();
    QuickBalance wished = balances.get(count);
    double sum = 0;
    sum += of(asked, Wish.LEVEL, Math.abs(wished.pitch() + c.setup().mast().baseAngle()));
    double miss = 0;
    double stall = 1;
    for (int i = 0; i < count; i++) {
      miss += Math.abs(balances.get(i).footShare() - c.rider().wishedFootShare()) / count;
      stall = Math.min(stall, balances.get(i).stallMargin());
    }
    sum += of(asked, Wish.FEET, miss);
    sum += of(asked, Wish.STALL, stall);
    sum +=
        of(
            asked,
            Wish.GROWTH,
            Math.abs(balances.get(count - 1).footShare() - balances.get(0).footShare())
                / (asked.span().to() - asked.span().from()));
    sum += of(asked, Wish.TAKE_OFF, slowest(quick, table, setup.foil().shimAngle()));
    sum += of(asked, Wish.TURN, asked.base().limits().of(RideLimit.BANK));
    sum +=
        of(
            asked,
            Wish.RANGE,
            c.rider().wishedSpeed()
                * c.setup().battery().get().pack().usableEnergy()
                / c.setup().battery().get().pack().drain(wished.power()));
    sum += of(asked, Wish.GEAR_MASS, new Craft(c).partsMass());
    sum += of(asked, Wish.FEET_MOVED, Math.abs(feet));
    // The bank is the screen's own: geometry of its own test. What it adds is taken off again.
    return (sum + bank(asked, c, wished)) / asked.wishes().weight();
  }

  private static double bank(RideAsked asked, RideCase c, QuickBalance wished) {
    double limit = asked.base().limits().of(RideLimit.BANK);
    double bank = ScreenBank.of(new Craft(c), wished.pitch());
    return of(asked, Wish.TURN, bank) - of(asked, Wish.TURN, limit);
  }

  /** Speeds a metre per second over ten thousand apart, from where nothing flies. */
  private static double slowest(QuickCase quick, PairTable table, double shim) {
    double low = PairTable.slowest();
    double high = PairTable.fastest();
    while (high - low > 1e-10) {
      double middle = 0.5 * (low + high);
      if (quick.at(middle).surplusAtStall(table.at(middle, shim)) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  private static double of(RideAsked asked, Wish wish, double value) {
    return asked.wishes().weight(wish) * asked.wishes().shortfall(wish, value);
  }

  @Test
  void whatThreadsFindTogetherIsWhatOneFinds() {
    RideAsked asked = riders().get(0);
    Screen screen = screen(ExampleStock.stock(), asked);
    BestFinds one = best(screen, asked, 1);
    BestFinds three = best(screen, asked, 3);
    assertThat(three.list()).hasSameSizeAs(one.list()).isNotEmpty();
    for (int i = 0; i < one.list().size(); i++) {
      assertThat(name(three.list().get(i).setup())).isEqualTo(name(one.list().get(i).setup()));
    }
    assertThat(three.tally().all().passed()).isEqualTo(one.tally().all().passed()).isPositive();
    assertThat(three.front().points()).hasSameSizeAs(one.front().points()).isNotEmpty();
  }

  private static BestFinds best(Screen screen, RideAsked asked, int threads) {
    return BestFinds.together(
        screen.run(
            () -> new BestFinds(Wish.TAKE_OFF, Wish.RANGE, asked.wishes(), java.util.Set.of()),
            new Workers(threads, false),
            Progress.NONE));
  }

  @Test
  void everySetupIsCountedOnceAndEachPartsAreItsOwn() {
    Stock stock = ExampleStock.stock();
    for (RideAsked asked : riders()) {
      Tally tally = best(screen(stock, asked), asked, 2).tally();
      assertThat(tally.all().setups()).isEqualTo(ExampleStock.space(stock).count());
      long wings = 0;
      for (StockPart<?> wing : stock.frontWings()) {
        wings += tally.of(wing).setups();
      }
      assertThat(wings).isEqualTo(tally.all().setups());
      assertThat(tally.of(stock.masts().get(1)).fell(Ground.BOARD_CLEARANCE)).isNotNegative();
    }
  }

  @Test
  void anotherPartNeverWorsensTheBest() {
    RideAsked asked = riders().get(0);
    Stock all = ExampleStock.stock();
    double before = Double.POSITIVE_INFINITY;
    for (int wings = 1; wings <= all.frontWings().size(); wings++) {
      Stock some =
          new Stock(
              all.boards(),
              all.batteries(),
              all.masts(),
              all.drives(),
              all.fuselages(),
              all.frontWings().subList(0, wings),
              all.stabilizers(),
              all.shims());
      double now = best(screen(some, asked), asked, 1).list().get(0).placement().shortfall();
      assertThat(now).isLessThanOrEqualTo(before);
      before = now;
    }
  }

  @Test
  void aStoppedScreenEnds() {
    RideAsked asked = riders().get(0);
    Progress stopped =
        new Progress() {
          @Override
          public void at(Stage stage, int done, int all) {
            // Nobody looks.
          }

          @Override
          public boolean isStopped() {
            return true;
          }
        };
    assertThatThrownBy(
            () ->
                screen(ExampleStock.stock(), asked)
                    .run(() -> (upper, foil, placements) -> {}, new Workers(2, false), stopped))
        .isInstanceOf(CancellationException.class);
  }
}
