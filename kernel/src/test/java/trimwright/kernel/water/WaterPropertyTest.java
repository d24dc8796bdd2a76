package trimwright.kernel.water;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import trimwright.seed.RunSeed;

class WaterPropertyTest {
  private static final double STEP = 0.5;
  private static final double SALT_STEP = 0.001;

  /** Water is densest at 277.13 K. */
  private static final double DENSEST = 277.15;

  @Property(seed = RunSeed.VALUE)
  void warmerWaterIsThinnerAndBoilsSooner(
      @ForAll @DoubleRange(min = 271.15, max = 312.65) double temperature,
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.042) double salinity) {
    Water cold = WaterModel.at(temperature, salinity);
    Water warm = WaterModel.at(temperature + STEP, salinity);
    assertThat(warm.kinematicViscosity()).isLessThan(cold.kinematicViscosity());
    assertThat(warm.vapourPressure()).isGreaterThan(cold.vapourPressure());
    if (temperature > DENSEST) {
      assertThat(warm.density()).isLessThan(cold.density());
    }
  }

  @Property(seed = RunSeed.VALUE)
  void saltierWaterIsHeavierStickierAndBoilsLater(
      @ForAll @DoubleRange(min = 271.15, max = 313.15) double temperature,
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.041) double salinity) {
    Water fresh = WaterModel.at(temperature, salinity);
    Water salt = WaterModel.at(temperature, salinity + SALT_STEP);
    assertThat(salt.density()).isGreaterThan(fresh.density());
    assertThat(salt.kinematicViscosity() * salt.density())
        .isGreaterThan(fresh.kinematicViscosity() * fresh.density());
    assertThat(salt.vapourPressure()).isLessThan(fresh.vapourPressure());
  }
}
