package trimwright.fitting.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import trimwright.fitting.match.ExampleStock;
import trimwright.fitting.stock.StockSetup;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.quick.QuickBalance;
import trimwright.kernel.quick.QuickCase;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

/** Both ways of judging beside each other, and limits that no way of judging may soften. */
class JudgesTest {
  /** What tables may miss: 0.1 degrees, and 3 mm on a stance of 480. */
  private static final double PITCH = Math.toRadians(0.1);

  private static final double SHARE = 3.0 / 480;

  private static Placement quick(StockSetup setup, RideAsked asked) {
    QuickJudge judge = new QuickJudge(asked);
    StockSetup middle = new StockSetup(setup.upper(), setup.foil(), 0);
    RideCase c = asked.on(middle.setup(ExampleStock.TEMPERATURE), 0);
    QuickRig rig = judge.rig(c).orElseThrow();
    PairTable table = ExampleStock.TABLES.of(new Craft(TableCase.of(c)));
    return judge.place(
        judge.ride(rig, judge.loads(table, setup.foil().shimAngle())), setup.track());
  }

  @Test
  void tablesAndTheFullSolutionSayTheSame() {
    RideAsked asked = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    FullJudge full = new FullJudge(asked, SurfaceTables.ANEW);
    List<StockSetup> setups = ExampleStock.space(ExampleStock.stock()).setups().toList();
    SplittableRandom chance = new SplittableRandom(5);
    int compared = 0;
    for (int i = 0; i < 24; i++) {
      StockSetup setup = setups.get(chance.nextInt(setups.size()));
      Placement placement = quick(setup, asked);
      if (!placement.passes()) {
        continue;
      }
      Judged judged = full.ride(asked.on(setup.setup(ExampleStock.TEMPERATURE), placement.feet()));
      assertThat(judged.grounds()).isEmpty();
      compared++;
      WishValues a = placement.values();
      WishValues b = judged.values();
      assertThat(a.of(Wish.LEVEL)).isCloseTo(b.of(Wish.LEVEL), within(PITCH));
      assertThat(a.of(Wish.FEET)).isCloseTo(b.of(Wish.FEET), within(SHARE));
      assertThat(a.of(Wish.GROWTH))
          .isCloseTo(
              b.of(Wish.GROWTH), within(2 * SHARE / (asked.span().to() - asked.span().from())));
      assertThat(a.of(Wish.TAKE_OFF)).isCloseTo(b.of(Wish.TAKE_OFF), within(0.1));
      assertThat(a.of(Wish.TURN)).isCloseTo(b.of(Wish.TURN), within(2 * PITCH));
      assertThat(a.of(Wish.RANGE) / b.of(Wish.RANGE)).isCloseTo(1, within(0.02));
      assertThat(a.of(Wish.GEAR_MASS)).isCloseTo(b.of(Wish.GEAR_MASS), within(1e-9));
      assertThat(a.of(Wish.FEET_MOVED)).isCloseTo(b.of(Wish.FEET_MOVED), within(1e-9));
      // A stall is where the first strip's table has its top: a node of pitch is as near as it
      // gets.
      assertThat(a.of(Wish.STALL)).isCloseTo(b.of(Wish.STALL), within(Math.toRadians(1.5)));
    }
    assertThat(compared).isGreaterThan(5);
  }

  @Test
  void roundedDepthAndViscosityMoveATrimLessThanTablesMayMiss() {
    RideAsked asked = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    StockSetup setup = ExampleStock.space(ExampleStock.stock()).setups().findFirst().orElseThrow();
    for (double[] other :
        new double[][] {{0.424, 5, 35e-3}, {0.474, 27, 0}, {0.45, 13, 20e-3}, {0.326, 18, 0}}) {
      Water water = WaterModel.at(273.15 + other[1], other[2]);
      RideCase c =
          asked
              .on(setup.setup(ExampleStock.TEMPERATURE), 0)
              .withWater(water)
              .withImmersion(other[0]);
      QuickCase quick = new QuickCase(new Craft(c));
      PairTable exact = PairTable.of(new Craft(c));
      PairTable rounded = PairTable.of(new Craft(TableCase.of(c)));
      for (double speed : new double[] {5.5, 7, 8.5}) {
        QuickBalance a = quick.at(speed).trim(exact.at(speed, 0)).balance().orElseThrow();
        QuickBalance b = quick.at(speed).trim(rounded.at(speed, 0)).balance().orElseThrow();
        assertThat(b.pitch()).isCloseTo(a.pitch(), within(Math.toRadians(0.03)));
        assertThat(b.footPressure()).isCloseTo(a.footPressure(), within(1e-3));
        assertThat(b.thrust() / a.thrust()).isCloseTo(1, within(0.02));
      }
    }
  }

  @Test
  void tighterLimitsAreHeldByBoth() {
    RideAsked plain = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    RideLimits tight =
        RideLimits.tightened(
            java.util.Map.of(
                RideLimit.STALL_MARGIN, RideLimit.STALL_MARGIN.strictest(),
                RideLimit.PITCH, RideLimit.PITCH.strictest()));
    RideAsked asked = plain.of(plain.base().within(tight));
    int fell = 0;
    for (StockSetup setup : ExampleStock.space(ExampleStock.stock()).setups().limit(12).toList()) {
      Placement placement = quick(setup, asked);
      RideCase c = asked.on(setup.setup(ExampleStock.TEMPERATURE), placement.feet());
      Judged judged = new FullJudge(asked, SurfaceTables.ANEW).ride(c);
      if (placement.passes()) {
        assertThat(judged.values().of(Wish.STALL))
            .isGreaterThan(tight.of(RideLimit.STALL_MARGIN) - Math.toRadians(1.5));
      } else {
        fell++;
        assertThat(judged.passes()).isFalse();
      }
    }
    assertThat(fell).isPositive();
  }

  @Test
  void aMastTooShortForTheDepthLeavesNoRoom() {
    RideAsked plain = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    RideAsked asked = plain.of(plain.base().withImmersion(0.6));
    StockSetup low =
        ExampleStock.space(ExampleStock.stock())
            .setups()
            .filter(setup -> setup.upper().mast().id().equals("mast-500"))
            .findFirst()
            .orElseThrow();
    RideCase c = asked.on(low.setup(ExampleStock.TEMPERATURE), 0);
    assertThat(new QuickJudge(asked).rig(c)).isEmpty();
    Judged judged = new FullJudge(asked, SurfaceTables.ANEW).ride(c);
    assertThat(judged.firstGround()).contains(Ground.NO_ROOM);
    assertThat(judged.values().has(Wish.LEVEL)).isFalse();
  }

  @Test
  void aHeavierRiderFliesLaterAndASlowerOneRidesMoreNoseUp() {
    // Common practice, no source, and lift equals weight at a given angle of attack.
    StockSetup setup = ExampleStock.space(ExampleStock.stock()).setups().findFirst().orElseThrow();
    double before = 0;
    for (double mass : new double[] {50, 70, 90, 110}) {
      RideAsked asked = ExampleStock.asked(ExampleStock.rider(mass, 25), RidingKind.LINKING);
      Judged judged =
          new FullJudge(asked, SurfaceTables.ANEW)
              .ride(asked.on(setup.setup(ExampleStock.TEMPERATURE), 0));
      assertThat(judged.values().of(Wish.TAKE_OFF)).isGreaterThan(before);
      before = judged.values().of(Wish.TAKE_OFF);
    }
  }

  @Test
  void valuesOutsideAreRefusedInWords() {
    RideAsked asked = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    assertThatThrownBy(() -> new RideSpan(8, 6, 5)).hasMessageContaining("rise");
    assertThatThrownBy(() -> new RideSpan(4, 6, 1)).hasMessageContaining("were 1");
    RideAsked fast =
        new RideAsked(
            asked.base(),
            new RideSpan(4, 20, 5),
            asked.wishes(),
            0.1,
            asked.posture(),
            Optional.empty());
    assertThatThrownBy(() -> new QuickJudge(fast)).hasMessageContaining("2.0 to 14.0 m/s");
    assertThatThrownBy(
            () ->
                new RideAsked(
                    asked.base(),
                    asked.span(),
                    asked.wishes(),
                    -1,
                    asked.posture(),
                    Optional.empty()))
        .hasMessageContaining("reach");
    assertThat(FullJudge.range(asked.base(), OptionalDouble.empty(), 7)).isNaN();
  }
}
