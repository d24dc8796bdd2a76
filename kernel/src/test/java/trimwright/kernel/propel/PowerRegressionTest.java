package trimwright.kernel.propel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.water.Water;

/** Our own values, frozen: whoever moves one looks again. */
class PowerRegressionTest {
  private static final double TIGHT = 1e-6;

  private static final DriveLimits LIMITS =
      new DriveLimits(5000, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(60));

  @Test
  void threeBladesInALake() {
    Water water = new Water(998.7, 1.05e-6, 2064);
    Powertrain drive =
        ScrewPowertrain.of(new Screw(new SeriesPropeller(3, 1.1, 0.5), 0.15, water), 0.8, LIMITS);
    ScrewState state = drive.findState(130, 25 / 3.6).orElseThrow();
    assertThat(state.revolutions()).isCloseTo(49.187652, within(TIGHT));
    assertThat(state.torque()).isCloseTo(4.022656, within(TIGHT));
    assertThat(state.propellerEfficiency()).isCloseTo(0.726159, within(TIGHT));
    assertThat(state.motorEfficiency()).isCloseTo(0.758106, within(TIGHT));
    assertThat(state.electricPower()).isCloseTo(1639.905998, within(TIGHT));
    assertThat(drive.greatestThrust(0).thrust()).isCloseTo(490.59051, within(1e-5));
    assertThat(drive.greatestThrust(5).thrust()).isCloseTo(402.344022, within(1e-5));
  }
}
