package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own values, frozen: a change here is a change of numbers. */
class SectionRegressionTest {
  /** Half of the last digit below; rounding in the dense system is smaller. */
  private static final double FROZEN = 5e-7;

  @ParameterizedTest
  @CsvSource({
    "0009, 0.000000, 6.160160, 0.000000, 0.246899, 0.008876, 0.953173, -0.795394, -2.157299",
    "0012, 0.000000, 6.101855, 0.000000, 0.246496, 0.009271, 1.070965, -0.862726, -1.604728",
    "2412, -0.035361, 6.106534, -0.047362, 0.246481, 0.007711, 1.297015, -0.705869, -0.834358",
    "4415, -0.071120, 6.052929, -0.093257, 0.246075, 0.007674, 1.354534, -0.589762, -0.872808",
    "23012, -0.019273, 6.109309, -0.007722, 0.245525, 0.007550, 1.368693, -0.716408, -1.215289",
    "6409, -0.104171, 6.202919, -0.141268, 0.247324, 0.007417, 1.299862, -0.477240, -1.228860"
  })
  void sectionsKeepTheirNumbers(
      String code,
      double zeroLiftAngle,
      double liftSlope,
      double moment,
      double centre,
      double drag,
      double maximum,
      double minimum,
      double pressure) {
    Section section = Sections.naca(code);
    near(section.zeroLiftAngle(), zeroLiftAngle);
    near(section.liftSlope(), liftSlope);
    near(section.momentAtZeroLift(), moment);
    near(section.aerodynamicCentre(), centre);
    near(section.drag(0.5, 6e5, Finish.CLEAN), drag);
    near(section.maximumLift(6e5, Finish.CLEAN), maximum);
    near(section.minimumLift(6e5, Finish.SCUFFED), minimum);
    near(section.minimumPressure(0.5), pressure);
  }

  private static void near(double computed, double frozen) {
    assertThat(computed).isCloseTo(frozen, within(FROZEN));
  }
}
