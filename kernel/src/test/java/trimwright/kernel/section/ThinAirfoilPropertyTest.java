package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import trimwright.seed.RunSeed;

/**
 * Thin-airfoil values against integrals worked out here in another way: from the heights of the
 * mean line instead of its slopes (Munk's form), with Gauss-Chebyshev points that take in the
 * singular weights.
 */
class ThinAirfoilPropertyTest {
  /** Both quadratures on lines with a corner in their curvature. */
  private static final double QUADRATURE = 2e-6;

  private static final int POINTS = 4001;

  /** (1/π) ∫ f(x) / √(x (1 - x)) dx. */
  private static double chebyshev(DoubleUnaryOperator f) {
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      double x = 0.5 * (1 - Math.cos(Math.PI * (2 * i + 1) / (2.0 * POINTS)));
      sum += f.applyAsDouble(x);
    }
    return sum / POINTS;
  }

  private static void agrees(MeanLine line) {
    ThinAirfoil thin = ThinAirfoil.of(line);
    // Munk: angle of no lift = -(1/π) ∫ z / ((1 - x) √(x (1 - x))) dx.
    double angle = -chebyshev(x -> line.height(x) / (1 - x));
    assertThat(thin.zeroLiftAngle()).isCloseTo(angle, within(QUADRATURE));
    assertThat(thin.quarterChordMoment()).isCloseTo(moment(line), within(QUADRATURE));
  }

  /**
   * (1/2) ∫ dz/dx (cos 2θ - cos θ) dθ, turned by parts into heights: with dz/dx = 2 (dz/dθ) / sin θ
   * and z = 0 at both ends it is -∫ z d/dθ((cos 2θ - cos θ) / sin θ) dθ.
   */
  private static double moment(MeanLine line) {
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
      double angle = Math.PI * (2 * i + 1) / (2.0 * POINTS);
      double sin = Math.sin(angle);
      double cos = Math.cos(angle);
      double numerator = Math.cos(2 * angle) - cos;
      double derivative = ((sin - 2 * Math.sin(2 * angle)) * sin - numerator * cos) / (sin * sin);
      sum += line.height(0.5 * (1 - cos)) * derivative;
    }
    return -Math.PI * sum / POINTS;
  }

  @Property(tries = 200, seed = RunSeed.VALUE)
  void agreesWithMunksIntegralsForTwoParabolas(
      @ForAll @Scale(4) @DoubleRange(min = -0.09, max = 0.09) double camber,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double position) {
    agrees(new TwoParabolas(camber, position));
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void agreesWithMunksIntegralsForCubicLines(
      @ForAll @IntRange(min = 1, max = 5) int place,
      @ForAll @DoubleRange(min = 0.15, max = 1.2) double lift) {
    agrees(CubicLine.standard(place, lift));
    if (place > 1) {
      agrees(CubicLine.reflexed(place, lift));
    }
  }
}
