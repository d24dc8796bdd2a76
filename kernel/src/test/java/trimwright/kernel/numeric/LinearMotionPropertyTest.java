package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import trimwright.seed.RunSeed;

class LinearMotionPropertyTest {
  /** Rounding of a few hundred products of small matrices, relative to the largest state. */
  private static final double ROUNDING = 1e-10;

  @Property(seed = RunSeed.VALUE)
  void anOscillatorHasTheEigenvaluesOfItsFrequencyAndDamping(
      @ForAll @DoubleRange(min = 0.1, max = 30) double frequency,
      @ForAll @DoubleRange(min = -0.9, max = 0.9) double damping) {
    double[][] pair = oscillator(frequency, damping).eigenvalues();
    double swing = frequency * Math.sqrt(1 - damping * damping);
    near(pair[0][0], -damping * frequency, frequency);
    near(pair[0][1], swing, frequency);
    near(pair[1][0], -damping * frequency, frequency);
    near(pair[1][1], -swing, frequency);
  }

  @Property(seed = RunSeed.VALUE)
  void anOverdampedOneHasTwoRealOnesTheSlowerFirst(
      @ForAll @DoubleRange(min = 0.1, max = 30) double frequency,
      @ForAll @DoubleRange(min = 1.1, max = 5) double damping) {
    double[][] pair = oscillator(frequency, damping).eigenvalues();
    double root = Math.sqrt(damping * damping - 1);
    near(pair[0][0], -frequency * (damping - root), frequency);
    near(pair[1][0], -frequency * (damping + root), frequency);
    assertThat(pair[0][1]).isZero();
    assertThat(pair[1][1]).isZero();
  }

  /** The textbook answer to a step, for which the deflection at rest is 1. */
  @Property(seed = RunSeed.VALUE)
  void anOscillatorAnswersAStepAsItsClosedSolutionSays(
      @ForAll @DoubleRange(min = 0.5, max = 20) double frequency,
      @ForAll @DoubleRange(min = 0, max = 0.95) double damping,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.1) double step) {
    double swing = frequency * Math.sqrt(1 - damping * damping);
    double[] push = {0, frequency * frequency};
    oscillator(frequency, damping)
        .fromRest(
            push,
            step,
            100,
            (time, state) -> {
              double decay = Math.exp(-damping * frequency * time);
              double ratio = damping * frequency / swing;
              double deflection =
                  1 - decay * (Math.cos(swing * time) + ratio * Math.sin(swing * time));
              double rate = decay * frequency * frequency / swing * Math.sin(swing * time);
              near(state[0], deflection, 1);
              near(state[1], rate, frequency);
              return true;
            });
  }

  @Property(seed = RunSeed.VALUE)
  void aCriticallyDampedOneAnswersAsItsOwnClosedSolutionSays(
      @ForAll @DoubleRange(min = 0.5, max = 20) double frequency) {
    oscillator(frequency, 1)
        .fromRest(
            new double[] {0, frequency * frequency},
            0.02,
            100,
            (time, state) -> {
              double a = frequency * time;
              near(state[0], 1 - (1 + a) * Math.exp(-a), 1);
              return true;
            });
  }

  @Property(seed = RunSeed.VALUE)
  void whatGrowsGrowsAsItsExponential(
      @ForAll @DoubleRange(min = 0.1, max = 5) double growth,
      @ForAll @DoubleRange(min = -2, max = 2) double push) {
    double at3 =
        last(new LinearMotion(new double[][] {{growth}}), new double[] {push}, 0.03, 100)[0];
    double wanted = push * Math.expm1(3 * growth) / growth;
    near(at3, wanted, Math.abs(wanted));
  }

  @Property(seed = RunSeed.VALUE)
  void halfTheStepGivesTheSameStates(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int n) {
    Random random = new Random(seed);
    LinearMotion motion = new LinearMotion(matrix(random, n));
    double[] push = vector(random, n);
    double[] coarse = last(motion, push, 0.1, 20);
    double[] fine = last(motion, push, 0.05, 40);
    double size = largest(coarse);
    for (int i = 0; i < n; i++) {
      near(fine[i], coarse[i], size);
    }
  }

  @Property(seed = RunSeed.VALUE)
  void aSteadySwingSatisfiesItsEquation(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 6) int n,
      @ForAll @DoubleRange(min = 5, max = 30) double frequency) {
    Random random = new Random(seed);
    double[][] rates = matrix(random, n);
    double[] real = vector(random, n);
    double[] imaginary = vector(random, n);
    double[][] x = new LinearMotion(rates).swing(real, imaginary, frequency).orElseThrow();
    for (int i = 0; i < n; i++) {
      double re = -frequency * x[1][i] - real[i];
      double im = frequency * x[0][i] - imaginary[i];
      for (int j = 0; j < n; j++) {
        re -= rates[i][j] * x[0][j];
        im -= rates[i][j] * x[1][j];
      }
      near(re, 0, 1);
      near(im, 0, 1);
    }
  }

  @Property(seed = RunSeed.VALUE)
  void anOscillatorSwingsAsItsClosedSolutionSays(
      @ForAll @DoubleRange(min = 0.5, max = 20) double own,
      @ForAll @DoubleRange(min = 0.05, max = 2) double damping,
      @ForAll @DoubleRange(min = 0.1, max = 40) double frequency) {
    double[][] x =
        oscillator(own, damping)
            .swing(new double[] {0, own * own}, new double[2], frequency)
            .orElseThrow();
    double ratio = frequency / own;
    double size = 1 / Math.hypot(1 - ratio * ratio, 2 * damping * ratio);
    double lag = Math.atan2(2 * damping * ratio, 1 - ratio * ratio);
    near(x[0][0], size * Math.cos(lag), size);
    near(x[1][0], -size * Math.sin(lag), size);
  }

  @Property(seed = RunSeed.VALUE)
  void modesAreTheEigenvaluesWithTheirVectors(
      @ForAll @DoubleRange(min = 0.1, max = 30) double frequency,
      @ForAll @DoubleRange(min = -0.9, max = 0.9) double damping) {
    LinearMotion motion = oscillator(frequency, damping);
    double[][] pairs = motion.eigenvalues();
    List<LinearMotion.Eigen> modes = motion.modes();
    assertThat(modes).hasSize(2);
    for (int i = 0; i < 2; i++) {
      assertThat(modes.get(i).growth()).isEqualTo(pairs[i][0]);
      assertThat(modes.get(i).frequency()).isEqualTo(pairs[i][1]);
      // Its rate is the eigenvalue times its deflection.
      double[] re = modes.get(i).real();
      double[] im = modes.get(i).imaginary();
      double size = frequency * (Math.hypot(re[0], im[0]) + Math.hypot(re[1], im[1]));
      near(re[1], pairs[i][0] * re[0] - pairs[i][1] * im[0], size);
      near(im[1], pairs[i][0] * im[0] + pairs[i][1] * re[0], size);
      assertThat(size).isPositive();
    }
  }

  @Test
  void anUndampedOscillatorPushedAtItsOwnFrequencyHasNoSteadySwing() {
    assertThat(oscillator(3, 0).swing(new double[] {0, 1}, new double[2], 3)).isEmpty();
  }

  @Test
  void aMassPushedFromRestFallsByHalfTheSquareOfTime() {
    double[] at2 =
        last(new LinearMotion(new double[][] {{0, 1}, {0, 0}}), new double[] {0, 3}, 0.02, 100);
    near(at2[0], 6, 6);
    near(at2[1], 6, 6);
  }

  @Test
  void statesBeginAtRestAndEndWhenTheVisitorHasEnough() {
    List<Double> times = new ArrayList<>();
    oscillator(2, 0.1)
        .fromRest(
            new double[] {0, 4},
            0.25,
            100,
            (time, state) -> {
              if (times.isEmpty()) {
                assertThat(state[0]).isZero();
                assertThat(state[1]).isZero();
              }
              times.add(time);
              return times.size() < 5;
            });
    assertThat(times).containsExactly(0.0, 0.25, 0.5, 0.75, 1.0);
  }

  @Test
  void ratesChangedAfterwardsDoNotMatter() {
    double[][] rates = {{-1, 0}, {0, -2}};
    LinearMotion motion = new LinearMotion(rates);
    rates[0][0] = 5;
    assertThat(motion.eigenvalues()[0][0]).isEqualTo(-1);
  }

  private static LinearMotion oscillator(double frequency, double damping) {
    return new LinearMotion(
        new double[][] {{0, 1}, {-frequency * frequency, -2 * damping * frequency}});
  }

  private static double[] last(LinearMotion motion, double[] push, double step, int count) {
    double[] end = new double[push.length];
    motion.fromRest(
        push,
        step,
        count,
        (time, state) -> {
          System.arraycopy(state, 0, end, 0, end.length);
          return true;
        });
    return end;
  }

  /** Entries within 1 of 0, so that no eigenvalue is farther away than the number of rows. */
  private static double[][] matrix(Random random, int n) {
    double[][] a = new double[n][];
    for (int i = 0; i < n; i++) {
      a[i] = vector(random, n);
      // Far from every frequency asked for above.
      for (int j = 0; j < n; j++) {
        a[i][j] *= 2.0 / n;
      }
    }
    return a;
  }

  private static double[] vector(Random random, int n) {
    return random.doubles(n, -1, 1).toArray();
  }

  private static double largest(double[] values) {
    double most = 0;
    for (double value : values) {
      most = Math.max(most, Math.abs(value));
    }
    return most;
  }

  private static void near(double computed, double wanted, double size) {
    assertThat(computed).isCloseTo(wanted, within(ROUNDING * Math.max(size, 1e-12)));
  }
}
