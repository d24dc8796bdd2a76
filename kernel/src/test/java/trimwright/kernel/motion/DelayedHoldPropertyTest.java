package trimwright.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.seed.RunSeed;

/**
 * Limits in closed form for any delay: where the root that is as many fold as possible, n + 1 fold
 * for n growing parts, comes to lie on the axis.
 */
class DelayedHoldPropertyTest {
  /** How near to a limit both sides of it are asked for. */
  private static final double NEAR = 0.01;

  @Property(seed = RunSeed.VALUE)
  void oneGrowingPartIsHeldWhereGrowthTimesDelayIsBelowOne(
      @ForAll @DoubleRange(min = 0.05, max = 2) double delay) {
    assertThat(held(delay, root((1 - NEAR) / delay, 0))).isTrue();
    assertThat(held(delay, root((1 + NEAR) / delay, 0))).isFalse();
  }

  /** (z² + w²) d² + 4 z d + 2 = 0 for the triple root's distance z from the growth. */
  @ParameterizedTest
  @CsvSource({"0.25, 0.3", "0.25, 0.6", "0.25, 0.9", "0.5, 0.6"})
  void aGrowingSwingIsHeldUpToItsOwnLimit(double delay, double swingTimesDelay) {
    double limit = (2 - Math.sqrt(2 - swingTimesDelay * swingTimesDelay)) / delay;
    double swing = swingTimesDelay / delay;
    assertThat(heldSwing(delay, limit * (1 - NEAR), swing)).isTrue();
    assertThat(heldSwing(delay, limit * (1 + NEAR), swing)).isFalse();
  }

  private static boolean heldSwing(double delay, double growth, double swing) {
    return held(delay, root(growth, swing), root(growth, -swing));
  }

  private static boolean held(double delay, double[]... roots) {
    return DelayedHold.holds(List.of(roots), delay);
  }

  private static double[] root(double growth, double frequency) {
    return new double[] {growth, frequency};
  }
}
