package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class NodeTableTest {
  /** Rounding of cubics of the size of one. */
  private static final double ROUNDING = 1e-12;

  private static double cubic(double x) {
    return 0.3 - x + 0.5 * x * x + 0.25 * x * x * x;
  }

  @Test
  void aCubicComesBackExactlyAtUnevenNodesAndBeyondThem() {
    double[] nodes = {-1, -0.7, 0, 0.1, 0.15, 0.9, 1.2};
    double[][] values = {Arrays.stream(nodes).map(NodeTableTest::cubic).toArray()};
    NodeTable table = new NodeTable(nodes, values);
    for (double x = -1.5; x <= 1.5; x += 0.01) {
      assertThat(table.read(0, table.at(x))).isCloseTo(cubic(x), within(ROUNDING));
    }
  }

  @Test
  void halvingTheSpacingDividesTheErrorBySixteen() {
    double coarse = worst(20);
    double fine = worst(40);
    assertThat(coarse / fine).isBetween(13.0, 19.0);
  }

  private static double worst(int steps) {
    double[] nodes = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      nodes[i] = 3.0 * i / steps;
    }
    NodeTable table =
        new NodeTable(nodes, new double[][] {Arrays.stream(nodes).map(Math::sin).toArray()});
    double worst = 0;
    for (double x = 0; x <= 3; x += 1e-3) {
      worst = Math.max(worst, Math.abs(table.read(0, table.at(x)) - Math.sin(x)));
    }
    return worst;
  }

  @Test
  void tooFewNodesOrFallingOnesAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NodeTable(new double[] {0, 1, 2}, new double[1][3]));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NodeTable(new double[] {0, 1, 1, 2}, new double[1][4]));
  }
}
