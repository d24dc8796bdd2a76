package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.section.SkinFriction;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;
import trimwright.seed.RunSeed;

class HullAtSpeedPropertyTest {
  private static final Water WATER = WaterModel.at(291.15, 0.2e-3);
  private static final BoardHull HULL = new BoardHull(1.65, 0.66, 0.12, 0.095);

  @Property(tries = 50, seed = RunSeed.VALUE)
  void atRestABoardFloatsByArchimedes(
      @ForAll @DoubleRange(min = 0, max = 0.15) double trim,
      @ForAll @DoubleRange(min = 0.01, max = 0.4) double depth) {
    HullLoad load = new HullAtSpeed(HULL, WATER, 0).at(trim, depth);
    double buoyancy = WATER.density() * Craft.GRAVITY * HULL.under(trim, depth).volume();
    assertThat(load.lift()).isCloseTo(buoyancy, within(1e-9 * buoyancy));
    assertThat(load.drag()).isCloseTo(0, within(1e-12));
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void planingItIsSavitskys(
      @ForAll @DoubleRange(min = 0.04, max = 0.2) double trim,
      @ForAll @DoubleRange(min = 0.1, max = 0.99) double part,
      @ForAll @DoubleRange(min = 2, max = 9) double speed) {
    double depth = part * HULL.length() * Math.sin(trim);
    HullLoad load = new HullAtSpeed(HULL, WATER, speed).at(trim, depth);
    double beam = HULL.beam();
    double length = load.wettedLength() / beam;
    double cv = speed / Math.sqrt(Craft.GRAVITY * beam);
    double unit = 0.5 * WATER.density() * speed * speed * beam * beam;
    double lift = unit * Planing.flatLift(trim, length, cv);
    assertThat(load.planingShare()).isEqualTo(1);
    assertThat(load.lift()).isCloseTo(lift, within(1e-9 * lift));
    double along = Planing.bottomSpeed(trim, length, 0);
    double friction =
        unit
            * along
            * along
            * length
            * SkinFriction.ittc1957(
                along * speed * load.wettedLength() / WATER.kinematicViscosity());
    double drag = lift * Math.tan(trim) + friction / Math.cos(trim);
    assertThat(load.drag()).isCloseTo(drag, within(1e-9 * drag));
    double normal = (lift + friction * Math.sin(trim)) / Math.cos(trim);
    double arm = load.force().noseUp() / normal;
    double centre = Planing.centreOfPressure(length, cv) * load.wettedLength();
    // The share of the static lift by the printed lift formula, not by the rounded 5.21 and 2.39.
    assertThat(arm).isCloseTo(centre, within(1e-9));
  }

  @Property(tries = 200, seed = RunSeed.VALUE)
  void deeperLiftsMoreWhileTheBowIsDry(
      @ForAll @DoubleRange(min = 0.001, max = 0.2) @Scale(6) double trim,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(6) double part,
      @ForAll @DoubleRange(min = 0, max = 8) @Scale(6) double speed) {
    HullAtSpeed here = new HullAtSpeed(HULL, WATER, speed);
    double depth = part * HULL.length() * Math.sin(trim);
    // A bow that goes under stops planing: from there on a deeper board may lift less.
    assertThat(here.at(trim, depth + 1e-6).lift())
        .isGreaterThanOrEqualTo(here.at(trim, depth).lift());
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void nothingJumpsOverDepthTrimOrSpeed(
      @ForAll @DoubleRange(min = 0.001, max = 0.2) @Scale(6) double trim,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) @Scale(6) double depth,
      @ForAll @DoubleRange(min = 0.1, max = 8) @Scale(6) double speed) {
    // At no trim at all a flat bottom meets the water at once.
    HullAtSpeed here = new HullAtSpeed(HULL, WATER, speed);
    assertThat(steepest(d -> here.at(trim, d), 0, 0.5)).isLessThan(LEAST_JUMP);
    assertThat(steepest(t -> here.at(t, depth), 0, 0.2)).isLessThan(LEAST_JUMP);
    assertThat(steepest(v -> new HullAtSpeed(HULL, WATER, v).at(trim, depth), 0, 8))
        .isLessThan(LEAST_JUMP);
  }

  /** What is left of a jump [N], [N m] when its place is known to 2^-40 of the range searched. */
  private static final double LEAST_JUMP = 1e-3;

  /** Halves the range forty times towards the larger change: a jump is kept whole, a slope not. */
  private static double steepest(DoubleFunction<HullLoad> load, double low, double high) {
    double worst = 0;
    int parts = 64;
    for (int i = 0; i < parts; i++) {
      double a = low + (high - low) * i / parts;
      double b = low + (high - low) * (i + 1) / parts;
      HullLoad atA = load.apply(a);
      HullLoad atB = load.apply(b);
      for (int halving = 0; halving < 40; halving++) {
        double middle = (a + b) / 2;
        HullLoad atMiddle = load.apply(middle);
        if (change(atA, atMiddle) > change(atMiddle, atB)) {
          b = middle;
          atB = atMiddle;
        } else {
          a = middle;
          atA = atMiddle;
        }
      }
      worst = Math.max(worst, change(atA, atB));
    }
    return worst;
  }

  private static double change(HullLoad a, HullLoad b) {
    return Math.max(
        Math.max(Math.abs(a.lift() - b.lift()), Math.abs(a.drag() - b.drag())),
        Math.abs(a.force().noseUp() - b.force().noseUp()));
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void theLoadGoesToNothingAsTheBoardLeavesTheWater(
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double trim,
      @ForAll @DoubleRange(min = 0, max = 8) double speed) {
    HullLoad load = new HullAtSpeed(HULL, WATER, speed).at(trim, 1e-9);
    assertThat(load.lift()).isBetween(0.0, 2.0);
    assertThat(load.drag()).isBetween(0.0, 1.0);
    assertThat(new HullAtSpeed(HULL, WATER, speed).at(trim, 0)).isEqualTo(HullLoad.NONE);
  }
}
