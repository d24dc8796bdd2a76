package trimwright.kernel.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Our own values, frozen: a change here is a change of numbers. */
class WaterRegressionTest {
  /** Rounding of the last bits on another machine. */
  private static final double ROUNDING = 1e-12;

  @Test
  void standardSeaWaterAtFifteenDegrees() {
    Water water = WaterModel.at(288.15, 0.03516504);
    near(water.density(), 1025.9719628939517);
    near(water.kinematicViscosity(), 1.1892270218373823e-6);
    near(water.vapourPressure(), 1670.8169022251004);
  }

  @Test
  void freshWaterAtFifteenDegrees() {
    Water water = WaterModel.at(288.15, 0);
    near(water.density(), 999.1010317071507);
    near(water.kinematicViscosity(), 1.1385929923469714e-6);
    near(water.vapourPressure(), 1705.7448743923737);
  }

  private static void near(double computed, double frozen) {
    assertThat(computed).isCloseTo(frozen, within(ROUNDING * frozen));
  }
}
