package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.kernel.numeric.GaussLegendre;

class WaveWashTest {
  private static final double GRAVITY = 9.80665;

  /** Half span of a line much longer than the waves [m]. */
  private static final double LONG = 300;

  /**
   * A number of the two-dimensional flow, per circulation [1/m], from lines of two lengths: what
   * the ends do falls with the length, so that it drops out of twice the longer less the shorter.
   */
  private static double plane(
      double speed, double depth, double other, double distance, ToDoubleFunction<WaveWash> of) {
    double[] value = new double[2];
    for (int i = 0; i < 2; i++) {
      double half = (i + 1) * LONG;
      WaveWash wash =
          WaveWash.of(
              new LiftingLine[] {
                new LiftingLine(half, distance, depth), new LiftingLine(half, 0, other)
              },
              speed);
      // Mean square of an elliptical loading over the square of its mean: 8 / (3 pi² s) per metre.
      value[i] = of.applyAsDouble(wash) * 3 * Math.PI * Math.PI * half / 8;
    }
    return 2 * value[1] - value[0];
  }

  /**
   * The condition at the surface itself: V du/dx + (g/V) w = 0, with the flow of the vortex and of
   * its image of the same sense beside the waves'. A second way to all of it: derivative and wash
   * come from different integrals.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 0.4, 0.5",
    "3, 0.4, -0.7",
    "5, 0.5, 0.7",
    "5, 0.3, 2.5",
    "8, 0.5, 0.7",
    "2, 0.5, 1"
  })
  void theSurfaceKeepsItsPressure(double speed, double depth, double x) {
    double surface = 1e-7;
    double step = 1e-3;
    double growth =
        (plane(speed, depth, surface, x + step, w -> w.speedUp(1, 0))
                - plane(speed, depth, surface, x - step, w -> w.speedUp(1, 0)))
            / (2 * step);
    double wash = plane(speed, depth, surface, x, w -> w.turn(1, 0));
    double vortex = -x / (Math.PI * (x * x + depth * depth));
    double waveNumber = GRAVITY / (speed * speed);
    assertThat(growth + waveNumber * (wash + vortex))
        .isCloseTo(0, within(3e-3 * waveNumber * Math.abs(vortex)));
  }

  /** Two dimensions, at the vortex itself: v exp(-2 v h) per circulation. */
  @ParameterizedTest
  @CsvSource({"2, 0.3", "4, 0.5", "6, 1"})
  void aVeryLongLineFeelsTheTwoDimensionalWash(double speed, double depth) {
    double waveNumber = GRAVITY / (speed * speed);
    double turn = plane(speed, depth, depth, 1, w -> w.turn(0, 0));
    assertThat(turn).isCloseTo(-waveNumber * Math.exp(-2 * waveNumber * depth), within(1e-4));
  }

  /** Far behind stands a regular wave of upwash 2 v exp(-v H) cos(v x); far ahead nothing. */
  @Test
  void wavesRunDownstreamOnly() {
    double speed = 3;
    double depth = 0.4;
    double waveNumber = GRAVITY / (speed * speed);
    double length = 2 * Math.PI / waveNumber;
    for (double periods : new double[] {2, 2.25, 2.5}) {
      double distance = periods * length;
      double expected =
          -2 * waveNumber * Math.exp(-2 * waveNumber * depth) * Math.cos(2 * Math.PI * periods);
      // What is local dies away as one over the distance: 1 / (pi x) of the vortex itself.
      double local = 1.5 / (Math.PI * periods * length);
      assertThat(plane(speed, depth, depth, distance, w -> w.turn(1, 0)))
          .isCloseTo(expected, within(local));
      assertThat(plane(speed, depth, depth, distance, w -> w.turn(0, 1)))
          .isCloseTo(0, within(local));
    }
  }

  /** The line upon itself is the strips' solution of {@link StripWaves}, loaded elliptically. */
  @ParameterizedTest
  @CsvSource({"2.5, 0.45, 0.3", "4, 0.45, 0.45", "7, 0.5, 0.3", "11, 0.21, 0.6"})
  void aLineUponItselfAgreesWithTheStrips(double speed, double half, double depth) {
    int strips = 60;
    double[] edges = StripWavesTest.edges(half, strips);
    double[] loading = StripWavesTest.elliptical(edges);
    double lift = 0;
    for (int k = 0; k < strips; k++) {
      lift += 2 * loading[k] * (edges[k + 1] - edges[k]);
    }
    double[] upwash = StripWaves.of(edges, depth, speed).upwashBeyondImage(loading);
    double mean = 0;
    for (int k = 0; k < strips; k++) {
      mean += 2 * upwash[k] * loading[k] * (edges[k + 1] - edges[k]) / lift;
    }
    // Upwash over V; lift over the dynamic pressure is 2 circulation x span / V.
    double expected = mean / (2 * lift);
    double turn =
        WaveWash.of(new LiftingLine[] {new LiftingLine(half, 0, depth)}, speed).turn(0, 0);
    assertThat(turn).isCloseTo(expected, within(1e-3 * Math.abs(expected) + 1e-5));
  }

  /** What the waves do beyond the image dies away as the speed grows. */
  @Test
  void atHighSpeedOnlyTheImageIsLeft() {
    double last = Double.POSITIVE_INFINITY;
    for (double speed : new double[] {8, 16, 32, 64, 300}) {
      WaveWash waves = setup(speed);
      double most = 0;
      for (int i = 0; i < 2; i++) {
        for (int j = 0; j < 2; j++) {
          most = Math.max(most, Math.abs(waves.turn(i, j)));
          most = Math.max(most, Math.abs(waves.speedUp(i, j)));
        }
      }
      assertThat(most).isLessThan(0.6 * last);
      last = most;
    }
    assertThat(last).isLessThan(1e-4);
  }

  /** Deep lines feel no surface, image and waves together vanish; what is beyond is the image. */
  @Test
  void deepDownNothingIsFelt() {
    WaveWash deep =
        WaveWash.of(
            new LiftingLine[] {new LiftingLine(0.45, 0.7, 30), new LiftingLine(0.2, 0, 30)}, 4);
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        assertThat(deep.turn(i, j)).isCloseTo(0, within(2e-4));
        assertThat(deep.speedUp(i, j)).isCloseTo(0, within(2e-4));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {2, 3.5, 6, 10})
  void theChangeWithDepthIsTheDerivative(double speed) {
    double step = 1e-4;
    LiftingLine front = new LiftingLine(0.45, 0.71, 0.45);
    WaveWash at = WaveWash.of(new LiftingLine[] {front, new LiftingLine(0.21, 0, 0.4)}, speed);
    WaveWash up =
        WaveWash.of(new LiftingLine[] {front, new LiftingLine(0.21, 0, 0.4 - step)}, speed);
    WaveWash down =
        WaveWash.of(new LiftingLine[] {front, new LiftingLine(0.21, 0, 0.4 + step)}, speed);
    assertThat(at.turnWithDepth(1, 0))
        .isCloseTo((down.turn(1, 0) - up.turn(1, 0)) / (2 * step), within(1e-5));
    assertThat(at.turnWithDepth(1, 1))
        .isCloseTo((down.turn(1, 1) - up.turn(1, 1)) / (2 * step), within(1e-5));
  }

  /** Lengths in proportion to the square of the speed: turns fall with the area (Froude's law). */
  @Test
  void everythingScalesByFroudesLaw() {
    Random random = new Random(7);
    for (int n = 0; n < 20; n++) {
      double speed = 2 + 6 * random.nextDouble();
      double depth = 0.2 + 0.6 * random.nextDouble();
      double scale = 0.5 + 2 * random.nextDouble();
      WaveWash a =
          WaveWash.of(
              new LiftingLine[] {new LiftingLine(0.45, 0.7, depth), new LiftingLine(0.2, 0, 0.5)},
              speed);
      WaveWash b =
          WaveWash.of(
              new LiftingLine[] {
                new LiftingLine(scale * 0.45, scale * 0.7, scale * depth),
                new LiftingLine(scale * 0.2, 0, scale * 0.5)
              },
              speed * Math.sqrt(scale));
      for (int i = 0; i < 2; i++) {
        for (int j = 0; j < 2; j++) {
          assertThat(b.turn(i, j) * scale * scale).isCloseTo(a.turn(i, j), within(1e-9));
          assertThat(b.speedUp(i, j) * scale * scale).isCloseTo(a.speedUp(i, j), within(1e-9));
        }
      }
    }
  }

  /** The two lines' waves carry off energy however they stand: the drag is a positive form. */
  @Test
  void wavesAloneAlwaysDrag() {
    for (double speed : new double[] {2, 3, 4, 6, 9}) {
      WaveWash waves = setup(speed);
      double front = waves.turn(0, 0) - imageTurn(0.45, 0.45);
      double tail = waves.turn(1, 1) - imageTurn(0.21, 0.45);
      assertThat(front).isNegative();
      assertThat(tail).isNegative();
    }
  }

  /** Half of the image's downwash per lift, from its sum over the span at very high speed. */
  private static double imageTurn(double half, double depth) {
    LiftingLine line = new LiftingLine(half, 0, depth);
    double sum = 0;
    double end = 18 / (2 * depth);
    int steps = 4000;
    for (int i = 0; i < steps; i++) {
      double q = (i + 0.5) * end / steps;
      double f = line.transform(q);
      sum += f * f * 0.5 * q * Math.exp(-2 * q * depth) * end / steps;
    }
    return sum / (2 * Math.PI);
  }

  private static WaveWash setup(double speed) {
    return WaveWash.of(
        new LiftingLine[] {new LiftingLine(0.45, 0.71, 0.45), new LiftingLine(0.21, 0, 0.45)},
        speed);
  }

  /** Five times the nodes across the stream move the wash by less than 1e-5. */
  @Test
  void moreNodesChangeNothing() {
    Random random = new Random(3);
    GaussLegendre fine = GaussLegendre.of(120);
    for (int n = 0; n < 40; n++) {
      LiftingLine[] lines = {
        new LiftingLine(
            0.25 + 0.5 * random.nextDouble(),
            0.5 + 0.5 * random.nextDouble(),
            0.15 + 0.6 * random.nextDouble()),
        new LiftingLine(0.15 + 0.15 * random.nextDouble(), 0, 0.15 + 0.6 * random.nextDouble())
      };
      double speed = 1.5 + 10 * random.nextDouble();
      WaveWash standard = WaveWash.of(lines, speed);
      WaveWash finer = WaveWash.of(lines, speed, fine);
      for (int i = 0; i < 2; i++) {
        for (int j = 0; j < 2; j++) {
          assertThat(standard.turn(i, j)).isCloseTo(finer.turn(i, j), within(1e-5));
          assertThat(standard.speedUp(i, j)).isCloseTo(finer.speedUp(i, j), within(1e-5));
        }
      }
    }
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> new LiftingLine(0, 0, 1)).hasMessageContaining("half span");
    assertThatThrownBy(() -> new LiftingLine(1, 0, 0)).hasMessageContaining("depth");
    assertThatThrownBy(() -> setup(0)).hasMessageContaining("speed must be above 0");
  }
}
