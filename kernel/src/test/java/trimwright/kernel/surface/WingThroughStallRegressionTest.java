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
    "-8, -0.550529, 0.026544, 0.037970",
    "4, 0.356990, 0.014233, -0.069981",
    "10, 0.794518, 0.044145, -0.113389",
    "14, 1.011133, 0.075195, -0.131084",
    "18, 1.070924, 0.156182, -0.160293",
    "24, 1.010696, 0.337457, -0.217446"
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
