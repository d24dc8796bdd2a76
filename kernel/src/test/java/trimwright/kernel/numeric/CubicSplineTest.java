package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CubicSplineTest {
  private static final double ROUNDING = 1e-12;

  @Test
  void passesThroughItsPointsAndReproducesAStraightLineBeyondThemToo() {
    CubicSpline line = CubicSpline.natural(new double[] {0, 1, 3, 4}, new double[] {1, 3, 7, 9});
    for (double x : new double[] {-2, 0, 0.5, 1, 2.2, 3, 4, 6}) {
      assertThat(line.value(x)).isCloseTo(1 + 2 * x, within(ROUNDING));
      assertThat(line.slope(x)).isCloseTo(2, within(ROUNDING));
    }
  }

  @Test
  void convergesWithTheFourthPowerOnAFunctionWithoutCurvatureAtItsEnds() {
    double coarse = largestErrorOnSine(20);
    double fine = largestErrorOnSine(40);
    // Fourth order halves the error sixteenfold; 14 leaves room for the next term.
    assertThat(coarse / fine).isGreaterThan(14);
  }

  private static double largestErrorOnSine(int steps) {
    double[] at = new double[steps + 1];
    double[] value = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      at[i] = Math.PI * i / steps;
      value[i] = Math.sin(at[i]);
    }
    CubicSpline spline = CubicSpline.natural(at, value);
    double largest = 0;
    for (int i = 0; i < 1000; i++) {
      double x = Math.PI * i / 1000;
      largest = Math.max(largest, Math.abs(spline.value(x) - Math.sin(x)));
    }
    return largest;
  }

  @Test
  void slopeIsTheDerivativeOfTheValue() {
    CubicSpline spline =
        CubicSpline.natural(new double[] {0, 0.3, 1, 1.7, 2}, new double[] {0, 1, -1, 2, 2.5});
    double h = 1e-6;
    for (double x = -0.5; x < 2.5; x += 0.07) {
      double difference = (spline.value(x + h) - spline.value(x - h)) / (2 * h);
      assertThat(spline.slope(x)).isCloseTo(difference, within(1e-5));
    }
  }

  @Test
  void refusesPointsThatAreNoFunction() {
    assertThatThrownBy(() -> CubicSpline.natural(new double[] {0, 0}, new double[] {0, 1}))
        .hasMessageContaining("must rise");
    assertThatThrownBy(() -> CubicSpline.natural(new double[] {0}, new double[] {0}))
        .hasMessageContaining("at least 2 points");
    assertThatThrownBy(() -> CubicSpline.natural(new double[] {0, 1}, new double[] {0}))
        .hasMessageContaining("as many ordinates");
  }
}
