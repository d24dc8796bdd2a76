package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WavePressurePropertyTest {
  private static final double DENSITY = 1000;
  private static final double GRAVITY = 9.80665;

  /** Lamb's two-dimensional resistance is what a very wide load has per width. */
  @ParameterizedTest
  @ValueSource(doubles = {1.5, 2.2, 3})
  void aWideLoadHasTheTwoDimensionalResistance(double speed) {
    double length = 1.5;
    double width = 150;
    double k = GRAVITY / (speed * speed);
    double transform = WavePressure.parabola(0.5 * k * length);
    // R = k² |p|² / (rho g) per width, p the load per width: R / W² = that over the width.
    double lamb = k * k * transform * transform / (DENSITY * GRAVITY) / width;
    assertThat(fine(length, width, speed)).isCloseTo(lamb, within(0.02 * lamb));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.3, 1.7, 2, 2.5, 3, 4, 6})
  void theRuleAgreesWithManySmallSteps(double speed) {
    double fine = fine(1.65, 0.56, speed);
    double most = fine(1.65, 0.56, 2.2);
    double quick = WavePressure.perLoadSquared(1.65, 0.56, speed, DENSITY, GRAVITY);
    assertThat(quick).isCloseTo(fine, within(3e-3 * most));
  }

  @Test
  void itHasItsHumpWhereTheWaveIsTwiceAsLongAsTheLoad() {
    double length = 1.65;
    double best = 0;
    double at = 0;
    for (double v = 1; v < 6; v += 0.01) {
      double r = WavePressure.perLoadSquared(length, 0.56, v, DENSITY, GRAVITY);
      if (r > best) {
        best = r;
        at = v;
      }
    }
    // Humps of ships stand near a Froude number of 0.5.
    assertThat(at / Math.sqrt(GRAVITY * length)).isBetween(0.45, 0.7);
    assertThat(WavePressure.perLoadSquared(length, 0.56, 0, DENSITY, GRAVITY)).isZero();
    assertThat(WavePressure.perLoadSquared(length, 0.56, 30, DENSITY, GRAVITY))
        .isLessThan(0.05 * best);
  }

  @Test
  void theParabolasTransformIsItsIntegral() {
    for (double s : new double[] {1e-3, 0.5, 2, 7}) {
      double sum = 0;
      double all = 0;
      int n = 4000;
      for (int i = 0; i < n; i++) {
        double x = -1 + (i + 0.5) * 2 / n;
        sum += (1 - x * x) * Math.cos(s * x);
        all += 1 - x * x;
      }
      assertThat(WavePressure.parabola(s)).isCloseTo(sum / all, within(1e-5));
    }
  }

  /** The integral over the waves' directions with 200,000 steps. */
  private static double fine(double length, double width, double speed) {
    double k = GRAVITY / (speed * speed);
    double sum = 0;
    int n = 200_000;
    double last = 8;
    for (int i = 0; i < n; i++) {
      double u = (i + 0.5) * last / n;
      double cosh = Math.cosh(u);
      double s = 0.5 * k * width * cosh * Math.sinh(u);
      double across = s < 1e-6 ? 1 : Math.sin(s) / s;
      double f = WavePressure.parabola(0.5 * k * length * cosh) * across * cosh * cosh;
      sum += f * f * last / n;
    }
    return k * k * k / (Math.PI * DENSITY * GRAVITY) * sum;
  }
}
