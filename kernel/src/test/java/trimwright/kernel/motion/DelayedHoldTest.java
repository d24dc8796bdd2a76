package trimwright.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DelayedHoldTest {
  private static List<double[]> real(double... growths) {
    return java.util.Arrays.stream(growths).mapToObj(g -> new double[] {g, 0}).toList();
  }

  @Test
  void nothingThatGrowsIsHeldByItself() {
    assertThat(DelayedHold.holds(List.of(), 0.25)).isTrue();
  }

  /** One growing part is held while growth times delay is below 1: x' = x + u, u = -k x late. */
  @Test
  void oneGrowingPartIsHeldUpToTheKnownProduct() {
    assertThat(DelayedHold.holds(real(3.99), 0.25)).isTrue();
    assertThat(DelayedHold.holds(real(4.01), 0.25)).isFalse();
  }

  /** x'' = a x with place and rate fed back late: a d² below 2 (Stépán 1989). */
  @Test
  void aPendulumIsHeldUpToTheKnownDelay() {
    double delay = 0.25;
    for (double product : new double[] {1.9, 1.99}) {
      double root = Math.sqrt(product) / delay;
      assertThat(DelayedHold.holds(real(root, -root), delay)).isTrue();
    }
    for (double product : new double[] {2.01, 2.2}) {
      double root = Math.sqrt(product) / delay;
      assertThat(DelayedHold.holds(real(root, -root), delay)).isFalse();
    }
  }

  /**
   * Two alike: of s² - 2 a s + a², with both and their rates fed back, 2 - 4 a d + a² d² must stay
   * above 0 (the triple root at 0 by hand).
   */
  @Test
  void twoGrowingPartsAreHarderThanOne() {
    double limit = (2 - Math.sqrt(2)) / 0.25;
    assertThat(DelayedHold.holds(real(0.99 * limit, 0.98 * limit), 0.25)).isTrue();
    assertThat(DelayedHold.holds(real(1.02 * limit, 1.01 * limit), 0.25)).isFalse();
  }

  @Test
  void aSlowSwingIsHeldAndAQuickOneIsNot() {
    assertThat(DelayedHold.holds(List.of(new double[] {0.2, 2}, new double[] {0.2, -2}), 0.25))
        .isTrue();
    assertThat(DelayedHold.holds(List.of(new double[] {4, 3}, new double[] {4, -3}), 0.25))
        .isFalse();
  }

  @Test
  void aShorterDelayHoldsMore() {
    List<double[]> three = List.of(new double[] {3, 0}, new double[] {1, 1}, new double[] {1, -1});
    assertThat(DelayedHold.holds(three, 0.02)).isTrue();
    assertThat(DelayedHold.holds(three, 0.5)).isFalse();
  }
}
