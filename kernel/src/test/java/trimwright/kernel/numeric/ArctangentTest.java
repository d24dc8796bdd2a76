package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ArctangentTest {
  /**
   * Units in the last place that the two may differ by: one rounding each of slope, rest, sum and
   * complement.
   */
  private static final double UNITS = 4;

  @Test
  void agreesWithTheLibraryInEveryQuadrantAndAtEverySize() {
    Random random = new Random(7);
    for (int i = 0; i < 200_000; i++) {
      double y = random.nextGaussian() * Math.pow(10, random.nextInt(17) - 8);
      double x = random.nextGaussian() * Math.pow(10, random.nextInt(17) - 8);
      double expected = Math.atan2(y, x);
      assertThat(Arctangent.of(y, x)).isCloseTo(expected, within(UNITS * Math.ulp(expected)));
    }
  }

  @Test
  void axesAndDiagonalsComeOut() {
    assertThat(Arctangent.of(0, 3)).isZero();
    assertThat(Arctangent.of(0, 0)).isZero();
    assertThat(Arctangent.of(2, 0)).isEqualTo(Math.PI / 2);
    assertThat(Arctangent.of(-2, 0)).isEqualTo(-Math.PI / 2);
    assertThat(Arctangent.of(0, -1)).isEqualTo(Math.PI);
    assertThat(Arctangent.of(1, 1)).isEqualTo(Math.PI / 4);
    assertThat(Arctangent.of(-5, -5)).isEqualTo(-3 * Math.PI / 4);
  }
}
