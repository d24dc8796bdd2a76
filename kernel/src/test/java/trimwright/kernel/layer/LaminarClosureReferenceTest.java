package trimwright.kernel.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LaminarClosureReferenceTest {
  /** Natural spline between the rows of the table. */
  private static final double BETWEEN_ROWS = 4e-4;

  /** f''(0) and a guess of β: attached flows, then reversed ones. */
  @ParameterizedTest
  @CsvSource({
    "1.232588, 1.0",
    "0.774755, 0.3",
    "0.469600, 0.0",
    "0.319270, -0.10",
    "0.085700, -0.19",
    "-0.05, -0.195",
    "-0.09, -0.184",
    "-0.12, -0.165"
  })
  void theTableIsWhatAnotherSolutionOfTheSimilarFlowsGives(double wallShear, double beta) {
    SimilarLayer layer = SimilarLayer.of(wallShear, beta);
    double h = layer.shape();
    assertThat(LaminarClosure.energyShape(h)).isCloseTo(layer.energy(), within(BETWEEN_ROWS));
    assertThat(LaminarClosure.shear(h)).isCloseTo(layer.shear(), within(BETWEEN_ROWS));
    assertThat(LaminarClosure.dissipation(h)).isCloseTo(layer.dissipation(), within(BETWEEN_ROWS));
    assertThat(LaminarClosure.gradient(h)).isCloseTo(layer.gradient(), within(BETWEEN_ROWS));
  }

  /** Printed in every textbook: Blasius 2.591 and 0.2205, separation β -0.1988 at H 4.03. */
  @Test
  void theLandmarksOfTheTextbooksAreMet() {
    assertThat(LaminarClosure.shear(2.5911)).isCloseTo(0.2205, within(BETWEEN_ROWS));
    assertThat(LaminarClosure.shear(LaminarClosure.SEPARATION)).isCloseTo(0, within(BETWEEN_ROWS));
    assertThat(LaminarClosure.gradient(LaminarClosure.SEPARATION))
        .isCloseTo(LaminarClosure.SEPARATION_GRADIENT, within(BETWEEN_ROWS));
    assertThat(LaminarClosure.gradient(LaminarClosure.STAGNATION))
        .isCloseTo(LaminarClosure.STAGNATION_GRADIENT, within(BETWEEN_ROWS));
  }
}
