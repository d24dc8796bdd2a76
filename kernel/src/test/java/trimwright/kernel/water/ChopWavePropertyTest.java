package trimwright.kernel.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.seed.RunSeed;

class ChopWavePropertyTest {
  private static final double GRAVITY = 9.80665;

  /** Step of numerical slopes over a wave's length. */
  private static final double STEP = 1e-4;

  /** Error of central differences at that step, relative to the wave's own size. */
  private static final double DIFFERENCE = 1e-7;

  @Property(seed = RunSeed.VALUE)
  void waterIsNeitherMadeNorLost(
      @ForAll @DoubleRange(min = 1, max = 20) double frequency,
      @ForAll @DoubleRange(min = 0.01, max = 1) double depthInLengths,
      @ForAll @DoubleRange(min = 0, max = 6.28) double phase,
      @ForAll boolean against) {
    ChopWave wave = wave(frequency, phase, against);
    double scale = Math.abs(wave.wavenumber());
    double step = STEP / scale;
    double depth = depthInLengths / scale;
    double alongSlope =
        (wave.along(depth, wave.phaseAt(0, step)) - wave.along(depth, wave.phaseAt(0, -step)))
            / (2 * step);
    double upSlope =
        (wave.vertical(depth - step, phase) - wave.vertical(depth + step, phase)) / (2 * step);
    assertThat(alongSlope + upSlope).isCloseTo(0, within(DIFFERENCE * scale * wave.orbital(0)));
  }

  @Property(seed = RunSeed.VALUE)
  void theFlowHasNoSpin(
      @ForAll @DoubleRange(min = 1, max = 20) double frequency,
      @ForAll @DoubleRange(min = 0.01, max = 1) double depthInLengths,
      @ForAll @DoubleRange(min = 0, max = 6.28) double phase,
      @ForAll boolean against) {
    ChopWave wave = wave(frequency, phase, against);
    double scale = Math.abs(wave.wavenumber());
    double step = STEP / scale;
    double depth = depthInLengths / scale;
    double alongUpward =
        (wave.along(depth - step, phase) - wave.along(depth + step, phase)) / (2 * step);
    double upForward =
        (wave.vertical(depth, wave.phaseAt(0, step)) - wave.vertical(depth, wave.phaseAt(0, -step)))
            / (2 * step);
    assertThat(alongUpward - upForward).isCloseTo(0, within(DIFFERENCE * scale * wave.orbital(0)));
  }

  @Property(seed = RunSeed.VALUE)
  void theSurfaceRisesAsFastAsItsWater(
      @ForAll @DoubleRange(min = 1, max = 20) double frequency,
      @ForAll @DoubleRange(min = 0, max = 6.28) double phase,
      @ForAll boolean against) {
    ChopWave wave = wave(frequency, phase, against);
    double step = STEP / frequency;
    double rate =
        (wave.height(wave.phaseAt(step, 0)) - wave.height(wave.phaseAt(-step, 0))) / (2 * step);
    assertThat(wave.vertical(0, phase)).isCloseTo(rate, within(DIFFERENCE * wave.orbital(0)));
  }

  /** Upward and forward velocity are a quarter apart: the water goes round in a circle. */
  @Property(seed = RunSeed.VALUE)
  void theWaterGoesRoundInACircleThatShrinksWithDepth(
      @ForAll @DoubleRange(min = 1, max = 20) double frequency,
      @ForAll @DoubleRange(min = 0, max = 2) double depth,
      @ForAll @DoubleRange(min = 0, max = 6.28) double phase,
      @ForAll boolean against) {
    ChopWave wave = wave(frequency, phase, against);
    double speed = Math.hypot(wave.along(depth, phase), wave.vertical(depth, phase));
    double wanted =
        wave.amplitude() * frequency * Math.exp(-frequency * frequency / GRAVITY * depth);
    assertThat(speed).isCloseTo(wanted, within(1e-12));
    assertThat(wave.vertical(-0.1, phase)).isEqualTo(wave.vertical(0, phase));
  }

  @Property(seed = RunSeed.VALUE)
  void aCraftMeetsWavesAgainstItMoreOften(
      @ForAll @DoubleRange(min = 1, max = 20) double frequency,
      @ForAll @DoubleRange(min = 1, max = 12) double speed,
      @ForAll boolean against) {
    ChopWave wave = wave(frequency, 0.3, against);
    double met = wave.phaseAt(2, speed * 2) - wave.phaseAt(1, speed);
    assertThat(wave.encounterFrequency(speed)).isCloseTo(met, within(1e-10 * (1 + Math.abs(met))));
    assertThat(wave.encounterFrequency(speed) > frequency).isEqualTo(against);
  }

  @Test
  void underTheCrestOfAWaveAgainstTheCraftTheWaterRunsBackward() {
    ChopWave wave = wave(5, 0, true);
    assertThat(wave.height(0)).isEqualTo(wave.amplitude());
    assertThat(wave.along(0.1, 0)).isNegative();
    assertThat(wave.reversed().along(0.1, 0)).isPositive();
    // A craft short of the crest: the surface under it rises.
    double shortOfIt = wave.phaseAt(0, -0.1 / wave.wavenumber());
    assertThat(wave.vertical(0, shortOfIt)).isPositive();
  }

  private static ChopWave wave(double frequency, double phase, boolean against) {
    ChopWave wave = ChopWave.against(0.03, frequency, phase, GRAVITY);
    return against ? wave : wave.reversed();
  }
}
