package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GaussLegendreTest {

  /** Abramowitz and Stegun, table 25.4, three and four points; from memory. */
  @Test
  void nodesAndWeightsAreThePrintedOnes() {
    GaussLegendre three = GaussLegendre.of(3);
    assertThat(three.node(0, -1, 1)).isCloseTo(-0.774596669241483, within(1e-14));
    assertThat(three.node(1, -1, 1)).isCloseTo(0, within(1e-14));
    assertThat(three.weight(0, -1, 1)).isCloseTo(5.0 / 9, within(1e-14));
    assertThat(three.weight(1, -1, 1)).isCloseTo(8.0 / 9, within(1e-14));
    GaussLegendre four = GaussLegendre.of(4);
    assertThat(four.node(3, -1, 1)).isCloseTo(0.861136311594053, within(1e-14));
    assertThat(four.weight(3, -1, 1)).isCloseTo(0.347854845137454, within(1e-14));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 16, 64, 200})
  void polynomialsAreExact(int nodes) {
    GaussLegendre rule = GaussLegendre.of(nodes);
    int power = Math.min(2 * nodes - 1, 15);
    double sum = 0;
    for (int i = 0; i < rule.size(); i++) {
      sum += rule.weight(i, 0, 2) * Math.pow(rule.node(i, 0, 2), power);
    }
    double exact = Math.pow(2, power + 1) / (power + 1);
    assertThat(sum).isCloseTo(exact, within(1e-12 * exact));
  }

  @Test
  void aRuleNeedsANode() {
    assertThatThrownBy(() -> GaussLegendre.of(0)).hasMessageContaining("at least 1 node");
  }
}
