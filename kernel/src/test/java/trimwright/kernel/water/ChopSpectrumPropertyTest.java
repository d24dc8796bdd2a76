package trimwright.kernel.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import trimwright.kernel.numeric.GaussLegendre;
import trimwright.seed.RunSeed;

class ChopSpectrumPropertyTest {
  /** Rounding of a sum of some thousands of terms, relative. */
  private static final double ROUNDING = 1e-11;

  /** Of quadrature here, which goes by frequency where the shipped one goes by length. */
  private static final double QUADRATURE = 1e-9;

  /** Worked out apart from the program at depths of 0.02 to 0.3 lengths: at most 0.023. */
  private static final double TEN_WAVES = 0.03;

  /** The same: at most 0.001. */
  private static final double TWO_HUNDRED_WAVES = 0.002;

  @Property(seed = RunSeed.VALUE)
  void fourTimesTheRootOfTheVarianceIsTheHeight(
      @ForAll @DoubleRange(min = 0.01, max = 1) double height,
      @ForAll @DoubleRange(min = 0.3, max = 5) double period,
      @ForAll @DoubleRange(min = 1, max = 7) double enhancement) {
    ChopSpectrum sea = ChopSpectrum.of(height, period, enhancement);
    near(4 * Math.sqrt(sea.momentOf(0)), height, ROUNDING);
    near(4 * Math.sqrt(integral(sea, 0)), height, QUADRATURE);
  }

  @Property(seed = RunSeed.VALUE)
  void momentsAreTheIntegralsOfTheDensity(
      @ForAll @DoubleRange(min = 1, max = 7) double enhancement,
      @ForAll @IntRange(max = 3) int order) {
    ChopSpectrum sea = ChopSpectrum.of(0.2, 1.5, enhancement);
    near(sea.momentOf(order), integral(sea, order), QUADRATURE);
  }

  @Property(seed = RunSeed.VALUE)
  void theDensityIsHighestAtThePeak(
      @ForAll @DoubleRange(min = 0.3, max = 5) double period,
      @ForAll @DoubleRange(min = 0.2, max = 5) double over) {
    ChopSpectrum sea = ChopSpectrum.of(0.1, period);
    double peak = 2 * Math.PI / sea.peakPeriod();
    assertThat(sea.density(over * peak)).isLessThanOrEqualTo(sea.density(peak));
  }

  @Property(seed = RunSeed.VALUE)
  void componentsKeepTheVarianceOfTheSurfaceAndOfItsVelocityForAnyCount(
      @ForAll @DoubleRange(min = 0.01, max = 1) double height,
      @ForAll @DoubleRange(min = 1, max = 7) double enhancement,
      @ForAll @IntRange(min = 1, max = 300) int count) {
    ChopSpectrum sea = ChopSpectrum.of(height, 1.2, enhancement);
    List<ChopWave> waves = sea.components(count, 1);
    assertThat(waves).hasSize(count);
    near(half(waves, w -> w.amplitude() * w.amplitude()), sea.momentOf(0), ROUNDING);
    near(half(waves, w -> Math.pow(w.orbital(0), 2)), sea.momentOf(2), ROUNDING);
    for (int i = 1; i < count; i++) {
      assertThat(waves.get(i).frequency()).isGreaterThan(waves.get(i - 1).frequency());
    }
  }

  /** Below the surface the sum is not exact, and comes near with more waves. */
  @Property(seed = RunSeed.VALUE)
  void componentsComeNearTheVarianceOfTheVelocityAtADepth(
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double height,
      @ForAll @DoubleRange(min = 0.02, max = 0.3) double depthOverLength) {
    ChopSpectrum sea = ChopSpectrum.of(height);
    double depth = depthOverLength * 9.80665 * Math.pow(sea.peakPeriod(), 2) / (2 * Math.PI);
    double wanted = integral(sea, 2, depth);
    double few = half(sea.components(10, 1), w -> Math.pow(w.orbital(depth), 2));
    double many = half(sea.components(200, 1), w -> Math.pow(w.orbital(depth), 2));
    near(few, wanted, TEN_WAVES);
    near(many, wanted, TWO_HUNDRED_WAVES);
  }

  @Property(seed = RunSeed.VALUE)
  void theSameSeedGivesTheSameWavesAndAnotherOtherPhases(@ForAll long seed) {
    ChopSpectrum sea = ChopSpectrum.of(0.1);
    List<ChopWave> waves = sea.components(20, seed);
    assertThat(sea.components(20, seed)).isEqualTo(waves);
    assertThat(sea.components(20, seed + 1)).isNotEqualTo(waves);
    assertThat(waves).allMatch(w -> w.phase() >= 0 && w.phase() < 2 * Math.PI);
  }

  @Property(seed = RunSeed.VALUE)
  void chopOfAnyHeightIsEquallySteep(@ForAll @DoubleRange(min = 0.01, max = 2) double height) {
    ChopSpectrum sea = ChopSpectrum.of(height);
    double length = 9.80665 * Math.pow(sea.peakPeriod(), 2) / (2 * Math.PI);
    near(height / length, ChopSpectrum.STEEPNESS, ROUNDING);
  }

  @Test
  void stillWaterHasNoWaves() {
    for (ChopSpectrum still : List.of(ChopSpectrum.of(0), ChopSpectrum.of(0, 1.1))) {
      assertThat(still.components(10, 1)).isEmpty();
      assertThat(still.density(3)).isZero();
      assertThat(still.momentOf(2)).isZero();
      assertThat(still.significantHeight()).isZero();
    }
    assertThat(ChopSpectrum.of(0).peakPeriod()).isZero();
  }

  @Test
  void refusesWhatIsNoSea() {
    assertThatThrownBy(() -> ChopSpectrum.of(-0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("height of waves must be 0 m or more, was -0.1 m");
    assertThatThrownBy(() -> ChopSpectrum.of(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> ChopSpectrum.of(0.1, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("peak period of waves must be above 0 s, was 0.0 s");
    assertThatThrownBy(() -> ChopSpectrum.of(0.1, 1, 0.9))
        .isInstanceOf(IllegalArgumentException.class);
    ChopSpectrum sea = ChopSpectrum.of(0.1);
    assertThatThrownBy(() -> sea.momentOf(4)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> sea.momentOf(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> sea.components(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  private static double half(List<ChopWave> waves, ToDoubleFunction<ChopWave> square) {
    return 0.5 * waves.stream().mapToDouble(square).sum();
  }

  private static double integral(ChopSpectrum sea, int order) {
    return integral(sea, order, 0);
  }

  /** Over the logarithm of frequency, and in closed form where the fifth power alone is left. */
  private static double integral(ChopSpectrum sea, int order, double depth) {
    GaussLegendre rule = GaussLegendre.of(32);
    double peak = 2 * Math.PI / sea.peakPeriod();
    double[] edges = {0.2, 0.6, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 2, 5, 20, 100, 1000};
    double sum = 0;
    for (int part = 1; part < edges.length; part++) {
      double from = Math.log(edges[part - 1]);
      double to = Math.log(edges[part]);
      for (int i = 0; i < rule.size(); i++) {
        double omega = peak * Math.exp(rule.node(i, from, to));
        double decay = Math.exp(-2 * omega * omega / 9.80665 * depth);
        sum += rule.weight(i, from, to) * Math.pow(omega, order + 1) * sea.density(omega) * decay;
      }
    }
    double last = peak * edges[edges.length - 1];
    double tail = depth > 0 ? 0 : Math.pow(last, order + 1) * sea.density(last) / (4 - order);
    return sum + tail;
  }

  private static void near(double computed, double wanted, double relative) {
    assertThat(computed).isCloseTo(wanted, within(relative * Math.abs(wanted)));
  }
}
