package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import trimwright.seed.RunSeed;

class WingSheetTest {
  @Test
  void straightTaperAndEllipseHaveTheirExponents() {
    WingSheet taper = new WingSheet(0.5 * (0.2 + 0.1) * 0.9, 0.9, 0.2, 0.1, 0, 0, 0);
    assertThat(taper.exponent()).isCloseTo(1, within(1e-3));
    WingSheet ellipse = new WingSheet(Math.PI / 4 * 0.2 * 0.9, 0.9, 0.2, 1e-9, 0, 0, 0);
    // Straight pieces between stations lose a few parts in ten thousand of an ellipse's area.
    assertThat(ellipse.exponent()).isCloseTo(2, within(5e-3));
  }

  /** The mean of (1 - e^n)^(1/n) is Gamma(1+1/n)² / Gamma(1+2/n), Dirichlet's integral. */
  @Property(tries = 50, seed = RunSeed.VALUE)
  void exponentGivesTheAreaOfDirichletsIntegral(
      @ForAll @DoubleRange(min = 1.05, max = 7.5) double n) {
    double mean = Math.exp(2 * Gamma.logGamma(1 + 1 / n) - Gamma.logGamma(1 + 2 / n));
    double area = (0.06 + 0.155 * mean) * 0.9;
    WingSheet sheet = new WingSheet(area, 0.9, 0.215, 0.06, 0, 0, 0);
    assertThat(sheet.exponent()).isCloseTo(n, within(0.02 * n * n));
    assertThat(sheet.shape(FlatSection.THIN).area()).isCloseTo(area, within(1e-9));
  }

  @Test
  void contradictionSaysByHowMuch() {
    WingSheet sheet = new WingSheet(0.25, 0.9, 0.215, 0.06, 0, 0, 0);
    assertThatThrownBy(sheet::exponent)
        .isInstanceOfSatisfying(
            ContradictoryWing.class,
            e -> {
              assertThat(e.smallestArea()).isCloseTo(0.12375, within(1e-4));
              assertThat(e.largestArea()).isCloseTo(0.19, within(0.005));
            });
  }
}
