package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RootsTest {
  /** Width of the last bracket asked for. */
  private static final double WIDTH = 1e-10;

  /** Near a least value the digits of the function are spent at the root of the rounding. */
  private static final double LEAST_WIDTH = 1e-6;

  private static double root(DoubleUnaryOperator f, double a, double b) {
    return Roots.between(f, a, f.applyAsDouble(a), b, f.applyAsDouble(b), WIDTH);
  }

  @Test
  void rootsOfSmoothAndOfAwkwardFunctionsAreFound() {
    assertThat(root(x -> x * x - 2, 0, 2)).isCloseTo(Math.sqrt(2), within(WIDTH));
    assertThat(root(x -> 2 - x * x, 2, 0)).isCloseTo(Math.sqrt(2), within(WIDTH));
    // Flat on one side, where false position alone creeps.
    assertThat(root(x -> Math.pow(x, 15) - 1e-3, 0, 3))
        .isCloseTo(Math.pow(1e-3, 1.0 / 15), within(WIDTH));
    // A kink and a jump: the place of the change of sign.
    assertThat(root(x -> x < 0.3 ? 100 * (x - 0.3) : 0.01 * (x - 0.3), -5, 5))
        .isCloseTo(0.3, within(WIDTH));
    assertThat(root(x -> x < 0.7 ? -1 : 1, 0, 1)).isCloseTo(0.7, within(WIDTH));
  }

  @Test
  void aRootAtAnEndIsThatEndAndOneSignIsRefused() {
    assertThat(root(x -> x - 1, 1, 2)).isEqualTo(1);
    assertThat(root(x -> x - 2, 1, 2)).isEqualTo(2);
    assertThatIllegalArgumentException().isThrownBy(() -> root(x -> x * x + 1, -1, 1));
  }

  @Test
  void theLeastValueLiesWhereItDoes() {
    assertThat(Roots.leastBetween(x -> (x - 0.3) * (x - 0.3), -1, 2, LEAST_WIDTH))
        .isCloseTo(0.3, within(LEAST_WIDTH));
    assertThat(Roots.leastBetween(Math::abs, -1, 5, LEAST_WIDTH)).isCloseTo(0, within(LEAST_WIDTH));
  }
}
