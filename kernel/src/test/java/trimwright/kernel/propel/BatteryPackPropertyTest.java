package trimwright.kernel.propel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Batteries in the cold and under load; propellers near the surface. */
class BatteryPackPropertyTest {
  private static final double ENERGY = 2000 * 3600.0;
  private static final double ZERO = 273.15;

  private static BatteryPack at(double celsius) {
    return new BatteryPack(ENERGY, 0.85, Cells.at(ZERO + celsius));
  }

  @Test
  void coldHoldsLess() {
    assertThat(at(20).usableEnergy()).isEqualTo(0.85 * ENERGY);
    assertThat(at(35).capacityShare()).isEqualTo(1);
    // 70 over 80 between 2 and 32 °C, referred to 20 °C.
    assertThat(at(2).capacityShare()).isCloseTo(0.875 / 0.95, within(1e-12));
    double before = 1.0001;
    for (int celsius = 20; celsius >= -20; celsius -= 5) {
      assertThat(at(celsius).capacityShare()).isLessThan(before).isPositive();
      before = at(celsius).capacityShare();
    }
  }

  @Test
  void loadAndColdWarmTheCellsInsteadOfTheWater() {
    assertThat(at(20).drain(0)).isZero();
    double before = 1;
    for (double power = 500; power <= 5000; power += 500) {
      double share = power / at(20).drain(power);
      assertThat(share).isLessThan(before).isEqualTo(at(20).voltageShare(power), within(1e-12));
      assertThat(at(0).drain(power)).isGreaterThan(at(20).drain(power));
      before = share;
    }
    // At a tenth of the battery per hour hardly anything.
    assertThat(at(20).drain(200)).isCloseTo(200, within(1.0));
    assertThat(at(20).duration(1000)).isLessThan(0.85 * 2 * 3600);
    assertThat(at(20).drain(1e9)).isFinite();
  }

  @Test
  void currentLimitsPower() {
    Cells cells =
        new Cells(
            Cells.RATED_TEMPERATURE,
            OptionalDouble.of(50),
            OptionalDouble.of(0.05),
            OptionalDouble.of(80));
    BatteryPack pack = new BatteryPack(ENERGY, 0.85, cells);
    assertThat(pack.mostPower().orElseThrow()).isCloseTo(80 * (50 - 80 * 0.05), within(1e-9));
    assertThat(pack.voltageShare(pack.mostPower().orElseThrow()))
        .isCloseTo(1 - 80 * 0.05 / 50, within(1e-12));
    assertThat(at(20).mostPower()).isEmpty();
  }

  @Test
  void theSurfaceTakesThrust() {
    assertThat(new PropellerDepth(0.3, 0.075).thrustKept()).isEqualTo(1);
    assertThat(new PropellerDepth(0.3, 0.075).air()).isEqualTo(PropellerDepth.Air.NONE);
    assertThat(new PropellerDepth(0.2, 0.075).air()).isEqualTo(PropellerDepth.Air.UNDER_LOAD);
    assertThat(new PropellerDepth(0.08, 0.075).air()).isEqualTo(PropellerDepth.Air.NEAR);
    assertThat(new PropellerDepth(0.05, 0.075).air()).isEqualTo(PropellerDepth.Air.TIP_OUT);
    assertThat(new PropellerDepth(0.05, 0.075).tip()).isCloseTo(-0.025, within(1e-12));
    double before = 1;
    for (double depth = 1.29 * 0.075; depth > -0.3; depth -= 0.01) {
      double kept = new PropellerDepth(depth, 0.075).thrustKept();
      assertThat(kept).isBetween(0.0, before);
      before = kept;
    }
    // Level with the shaft about a third of the thrust is left.
    assertThat(new PropellerDepth(0, 0.075).thrustKept()).isCloseTo(0.325, within(1e-12));
  }

  @Test
  void bladesCavitateSoonerWhenNarrowOrHigh() {
    Blades blades = new Blades(3, 0.15, 0.5);
    double limit = BladeCavitation.thrustLimit(blades, 0.15, 1.02e5);
    assertThat(limit).isCloseTo(0.3 * 1.02e5 * 0.0225 / 2.2, within(1e-9));
    assertThat(BladeCavitation.thrustLimit(new Blades(3, 0.15, 0.4), 0.15, 1.02e5))
        .isLessThan(limit);
    assertThat(BladeCavitation.thrustLimit(blades, 0.15, 1.0e5)).isLessThan(limit);
  }
}
