package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LimitedCubicTest {
  private static final double ROUNDING = 1e-12;

  @Test
  void itPassesThroughThePointsAndNeverOvershoots() {
    double[] at = {0, 1, 2, 3, 5, 6};
    double[] value = {0, 0.1, 1, 1, -2, 3};
    LimitedCubic curve = new LimitedCubic(at, value);
    for (int i = 0; i < at.length; i++) {
      assertThat(curve.value(at[i])).isCloseTo(value[i], within(ROUNDING));
    }
    for (int i = 1; i < at.length; i++) {
      double low = Math.min(value[i - 1], value[i]);
      double high = Math.max(value[i - 1], value[i]);
      for (int k = 0; k <= 20; k++) {
        double x = at[i - 1] + (at[i] - at[i - 1]) * k / 20;
        assertThat(curve.value(x)).isBetween(low - ROUNDING, high + ROUNDING);
      }
    }
  }

  @Test
  void theSlopeIsTheValuesDerivativeAndContinuous() {
    LimitedCubic curve =
        new LimitedCubic(new double[] {0, 1, 2.5, 3}, new double[] {0, 2, 2.5, 2.6});
    for (double x : new double[] {-0.5, 0.3, 1.7, 2.9, 4}) {
      double difference = (curve.value(x + 1e-6) - curve.value(x - 1e-6)) / 2e-6;
      assertThat(curve.slope(x)).isCloseTo(difference, within(1e-8));
    }
    for (double x : new double[] {0, 1, 2.5, 3}) {
      assertThat(curve.slope(x - 1e-9)).isCloseTo(curve.slope(x + 1e-9), within(1e-7));
    }
  }

  @Test
  void aStraightLineStaysOne() {
    LimitedCubic curve = new LimitedCubic(new double[] {0, 1, 3}, new double[] {1, 3, 7});
    for (double x : new double[] {-1, 0.5, 2, 4}) {
      assertThat(curve.value(x)).isCloseTo(1 + 2 * x, within(ROUNDING));
    }
  }

  @Test
  void levelEndsGoOnAtTheirOrdinates() {
    LimitedCubic curve = LimitedCubic.levelAtEnds(new double[] {0, 1, 3}, new double[] {1, 3, 7});
    assertThat(curve.value(-2)).isEqualTo(1);
    assertThat(curve.value(5)).isEqualTo(7);
    assertThat(curve.slope(3 - 1e-9)).isCloseTo(0, within(1e-7));
  }

  @Test
  void pointsThatDoNotRiseAreRefused() {
    double[] twice = {0, 0};
    assertThatThrownBy(() -> new LimitedCubic(twice, new double[] {1, 2}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must rise");
    assertThatThrownBy(() -> new LimitedCubic(new double[] {0}, new double[] {1}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 2");
  }
}
