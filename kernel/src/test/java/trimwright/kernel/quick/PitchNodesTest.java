package trimwright.kernel.quick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trimwright.kernel.numeric.NodeTable;

class PitchNodesTest {
  private static final double ROUNDING = 1e-12;

  @Test
  void readsWhatATableOfTheSameNodesReads() {
    double[] nodes = {-0.1, -0.04, 0, 0.01, 0.05, 0.2};
    double[] values = {1, 3, -2, 0.5, 4, 1};
    PitchNodes pitches = new PitchNodes(nodes);
    NodeTable table = new NodeTable(nodes, new double[][] {values});
    for (double x = -0.12; x < 0.22; x += 0.003) {
      double expected = table.read(0, table.at(x));
      assertThat(pitches.value(x, values, 0)).isCloseTo(expected, within(1e3 * ROUNDING));
    }
  }

  @Test
  void slopesAreThoseOfTheValues() {
    PitchNodes pitches = new PitchNodes(new double[] {0, 0.1, 0.3, 0.7});
    double[] row = {9, 9, 1, -1, 2, 5};
    PitchNodes.Cubic cubic = pitches.cubic(1, row, 2);
    double step = 1e-4;
    for (double x = 0; x <= 0.7; x += 0.05) {
      double slope = (cubic.value(x + step) - cubic.value(x - step)) / (2 * step);
      assertThat(cubic.slope(x)).isCloseTo(slope, within(1e-4));
    }
  }

  @Test
  void evenSpacingGivesCubicsExactly() {
    Spacing spacing = new Spacing(-1, 3, 9);
    double[] weights = new double[4];
    for (double x = -1; x <= 3; x += 0.07) {
      int first = spacing.weights(x, weights);
      double sum = 0;
      for (int i = 0; i < 4; i++) {
        double node = -1 + 0.5 * (first + i);
        sum += weights[i] * node * node * node;
      }
      assertThat(sum).isCloseTo(x * x * x, within(ROUNDING * 100));
    }
  }
}
