package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.section.SkinFriction;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

class HullAtSpeedPropertyTest {
  private static final Water WATER = WaterModel.at(291.15, 0.2e-3);
  private static final BoardHull HULL = new BoardHull(1.65, 0.66, 0.12, 0.095);

  @Property(tries = 50)
  void atRestABoardFloatsByArchimedes(
      @ForAll @DoubleRange(min = 0, max = 0.15) double trim,
      @ForAll @DoubleRange(min = 0.01, max = 0.4) double depth) {
    HullLoad load = new HullAtSpeed(HULL, WATER, 0).at(trim, depth);
    double buoyancy = WATER.density() * Craft.GRAVITY * HULL.under(trim, depth).volume();
    assertThat(load.lift()).isCloseTo(buoyancy, within(1e-9 * buoyancy));
    assertThat(load.drag()).isCloseTo(0, within(1e-12));
  }

  @Property(tries = 100)
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

  @Property(tries = 200)
  void deeperLiftsMoreAndNothingJumps(
      @ForAll @DoubleRange(min = 0, max = 0.2) double trim,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double depth,
      @ForAll @DoubleRange(min = 0, max = 8) double speed) {
    HullAtSpeed here = new HullAtSpeed(HULL, WATER, speed);
    double step = 1e-6;
    HullLoad a = here.at(trim, depth);
    HullLoad b = here.at(trim, depth + step);
    assertThat(b.lift()).isGreaterThanOrEqualTo(a.lift() - 1e-6 * (1 + a.lift()));
    assertThat(b.lift() - a.lift()).isLessThan(0.2);
    assertThat(Math.abs(b.drag() - a.drag())).isLessThan(0.2);
    HullLoad faster = new HullAtSpeed(HULL, WATER, speed + 1e-6).at(trim, depth);
    // Waves are left out below a Froude number of 0.12, where they carry nothing.
    assertThat(Math.abs(faster.lift() - a.lift())).isLessThan(0.05);
    assertThat(Math.abs(faster.drag() - a.drag())).isLessThan(0.05);
    assertThat(Math.abs(faster.force().noseUp() - a.force().noseUp())).isLessThan(0.05);
  }

  @Property(tries = 100)
  void theLoadGoesToNothingAsTheBoardLeavesTheWater(
      @ForAll @DoubleRange(min = 0.01, max = 0.2) double trim,
      @ForAll @DoubleRange(min = 0, max = 8) double speed) {
    HullLoad load = new HullAtSpeed(HULL, WATER, speed).at(trim, 1e-9);
    assertThat(load.lift()).isBetween(0.0, 2.0);
    assertThat(load.drag()).isBetween(0.0, 1.0);
    assertThat(new HullAtSpeed(HULL, WATER, speed).at(trim, 0)).isEqualTo(HullLoad.NONE);
  }
}
