package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Sections;
import trimwright.kernel.water.WaterModel;

/** Our own values, frozen: a change here is a change of numbers. */
class WingThroughStallRegressionTest {
  /** Half of the last digit below and what an iteration stopped at 1e-9 leaves open. */
  private static final double FROZEN = 1e-6;

  @ParameterizedTest
  @CsvSource({
    "-8, -0.546128, 0.026764, 0.037428",
    "4, 0.354516, 0.014348, -0.069732",
    "10, 0.789799, 0.044722, -0.113022",
    "14, 1.008829, 0.075892, -0.130835",
    "18, 1.072491, 0.155350, -0.159639",
    "24, 1.014039, 0.337220, -0.217183"
  })
  void aTwistedTaperedWingNearTheSurfaceKeepsItsNumbers(
      double degrees, double lift, double drag, double moment) {
    WingShape shape =
        new WingShape(
            0.9,
            List.of(
                new Station(0, 0.2, 0, 0, 0, Sections.naca("2412")),
                new Station(1, 0.07, -0.04, -0.025, -0.0175, Sections.naca("0009"))));
    WingCoefficients c =
        WingAlone.of(shape, Finish.CLEAN, OptionalDouble.of(0.45), LatticeSize.FRONT_WING, false)
            .at(Math.toRadians(degrees), 6, WaterModel.at(288.15, 0));
    assertThat(c.lift()).isCloseTo(lift, within(FROZEN));
    assertThat(c.drag()).isCloseTo(drag, within(FROZEN));
    assertThat(c.moment()).isCloseTo(moment, within(FROZEN));
  }
}
