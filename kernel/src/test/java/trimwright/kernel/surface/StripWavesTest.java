package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StripWavesTest {
  private static final double GRAVITY = 9.80665;
  private static final double DENSITY = 1025;

  static double[] edges(double half, int strips) {
    double[] edges = new double[strips + 1];
    for (int k = 0; k <= strips; k++) {
      edges[k] = half * Math.sin(Math.PI * k / (2 * strips));
    }
    edges[strips] = half;
    return edges;
  }

  /** An elliptical loading of unit circulation in the middle, mean over each strip. */
  static double[] elliptical(double[] edges) {
    double half = edges[edges.length - 1];
    double[] loading = new double[edges.length - 1];
    for (int j = 0; j < loading.length; j++) {
      loading[j] =
          (area(edges[j + 1] / half) - area(edges[j] / half)) * half / (edges[j + 1] - edges[j]);
    }
    return loading;
  }

  private static double area(double eta) {
    return 0.5 * (eta * Math.sqrt(Math.max(0, 1 - eta * eta)) + Math.asin(Math.min(1, eta)));
  }

  /**
   * Two dimensions: rho g c²/V² exp(-2 g h/V²) per span (Wehausen and Laitone 1960, as quoted). On
   * a line of span 2 b the ends take away a share that falls with the span.
   */
  @ParameterizedTest
  @CsvSource({"2, 0.3", "4, 0.5", "6, 0.45", "6, 1"})
  void aVeryLongLineHasTheWaveDragOfTheTwoDimensionalVortex(double speed, double depth) {
    double waveNumber = GRAVITY / (speed * speed);
    double expected = DENSITY * waveNumber * Math.exp(-2 * waveNumber * depth);
    double[] errors = new double[2];
    for (int i = 0; i < 2; i++) {
      double half = (i + 1) * 200 / waveNumber;
      StripWaves waves = StripWaves.of(new double[] {0, half}, depth, speed);
      errors[i] = waves.waveDrag(new double[] {1}, DENSITY) / (2 * half) / expected - 1;
    }
    assertThat(errors[1]).isCloseTo(0, within(0.01));
    // The ends' share halves as the span doubles: their limit is the whole.
    assertThat(2 * errors[1] - errors[0]).isCloseTo(0, within(1e-4));
  }

  /** At high speed gravity has no say and the image is all there is. */
  @Test
  void atHighSpeedNothingIsLeftBeyondTheImage() {
    double[] edges = edges(0.5, 12);
    double[] loading = elliptical(edges);
    double whole = StripWaves.of(edges, 0.3, 1e4).waveDrag(loading, DENSITY);
    double last = Double.POSITIVE_INFINITY;
    for (double speed : new double[] {10, 30, 100, 1000}) {
      double beyond = StripWaves.of(edges, 0.3, speed).dragBeyondImage(loading, DENSITY);
      assertThat(Math.abs(beyond)).isLessThan(last);
      last = Math.abs(beyond);
    }
    assertThat(last / whole).isLessThan(1e-4);
  }

  /**
   * At high speed the free waves are twice the wall's upwash turned round, so that together they
   * are the image of the same sense: its induced drag, from the far wake of two parallel lines
   * (Prandtl's biplane, NACA Report 116), is half of the waves' drag.
   */
  @Test
  void atHighSpeedTheWavesAreTwiceTheImagesInducedDrag() {
    double[] edges = edges(0.5, 12);
    double[] loading = elliptical(edges);
    double depth = 0.3;
    double waves = StripWaves.of(edges, depth, 1e4).waveDrag(loading, DENSITY);
    assertThat(waves / (2 * mutualDrag(edges, loading, 2 * depth))).isCloseTo(1, within(1e-3));
  }

  /**
   * Drag that trailing vortices at a gap cause: rho/2 sum c times the normal wash far behind, strip
   * by strip from its middle and quarter points.
   */
  private static double mutualDrag(double[] edges, double[] loading, double gap) {
    int points = 400;
    double drag = 0;
    for (int i = 0; i < loading.length; i++) {
      double dy = (edges[i + 1] - edges[i]) / points;
      for (int p = 0; p < points; p++) {
        double y = edges[i] + (p + 0.5) * dy;
        double wash = 0;
        for (int j = 0; j < loading.length; j++) {
          for (double side : new double[] {1, -1}) {
            double a = y - side * edges[j];
            double b = y - side * edges[j + 1];
            double reach = a / (a * a + gap * gap) - b / (b * b + gap * gap);
            wash -= side * loading[j] * reach / (2 * Math.PI);
          }
        }
        drag += 2 * DENSITY * 0.5 * loading[i] * wash * dy;
      }
    }
    return Math.abs(drag);
  }

  /** Slow enough, a deep line makes no waves: their drag dies away exponentially. */
  @Test
  void aSlowDeepLineMakesNoWaves() {
    double[] edges = edges(0.5, 12);
    double[] loading = elliptical(edges);
    double atTwo = StripWaves.of(edges, 0.5, 2).waveDrag(loading, DENSITY);
    double atOne = StripWaves.of(edges, 0.5, 1).waveDrag(loading, DENSITY);
    assertThat(atOne).isPositive().isLessThan(1e-2 * atTwo);
  }

  @Test
  void deeperIsLessDragAndAnyLoadingHasSome() {
    double[] edges = edges(0.5, 8);
    Random random = new Random(5);
    for (int i = 0; i < 50; i++) {
      double[] loading = random.doubles(8, -1, 1).toArray();
      double speed = 2 + 8 * random.nextDouble();
      double shallow = StripWaves.of(edges, 0.2, speed).waveDrag(loading, DENSITY);
      double deep = StripWaves.of(edges, 0.4, speed).waveDrag(loading, DENSITY);
      assertThat(deep).isPositive().isLessThan(shallow);
    }
  }

  /** What the wash does to the line is what the line loses: drag and wash belong together. */
  @ParameterizedTest
  @ValueSource(doubles = {2.5, 4, 6, 9})
  void dragIsTheCirculationTimesTheWash(double speed) {
    double[] edges = edges(0.6, 10);
    double[] loading = elliptical(edges);
    StripWaves waves = StripWaves.of(edges, 0.35, speed);
    double[] upwash = waves.upwashBeyondImage(loading);
    double drag = 0;
    for (int j = 0; j < loading.length; j++) {
      drag -= 2 * DENSITY * loading[j] * upwash[j] * (edges[j + 1] - edges[j]);
    }
    assertThat(waves.dragBeyondImage(loading, DENSITY))
        .isCloseTo(drag, within(1e-9 * Math.abs(drag)));
  }

  /** Loading, depth and V² scaled alike leave drag over rho c² as it was (Froude's law). */
  @Test
  void froudesLawHolds() {
    double small = StripWaves.of(edges(0.3, 8), 0.2, 3).waveDrag(elliptical(edges(1, 8)), 1);
    double large = StripWaves.of(edges(1.2, 8), 0.8, 6).waveDrag(elliptical(edges(1, 8)), 1);
    assertThat(large / small).isCloseTo(1, within(1e-9));
  }

  @Test
  void finerStripsChangeLittle() {
    double coarse = StripWaves.of(edges(0.5, 8), 0.3, 5).waveDrag(elliptical(edges(0.5, 8)), 1);
    double fine = StripWaves.of(edges(0.5, 32), 0.3, 5).waveDrag(elliptical(edges(0.5, 32)), 1);
    assertThat(coarse / fine).isCloseTo(1, within(2e-3));
  }

  @Test
  void wrongNumbersAreRefused() {
    assertThatThrownBy(() -> StripWaves.of(new double[] {0, 0.5}, 0, 5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("depth");
    assertThatThrownBy(() -> StripWaves.of(new double[] {0, 0.5}, 0.3, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("speed");
    assertThatThrownBy(() -> StripWaves.of(new double[] {0, 0.5, 0.4}, 0.3, 5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rise");
  }
}
