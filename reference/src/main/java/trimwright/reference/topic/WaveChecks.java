package trimwright.reference.topic;

import java.util.Map;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.water.ChopSpectrum;
import trimwright.kernel.water.ChopWave;

/** The spectrum of a wind sea, and its waves one by one. */
public final class WaveChecks {
  /** Frequency over that of the peak at which only the spectrum's fifth power is left [1]. */
  private static final double FAR_ABOVE_PEAK = 100;

  /** Tail over variance and the peak's fourth power where the peak is not enhanced [1]. */
  private static final double PLAIN_TAIL = 5;

  private WaveChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "zero-crossing period of a sea", WaveChecks::zeroCrossing,
        "mean period of a sea", WaveChecks::mean,
        "density of a sea's spectrum", c -> sea(c).density(c.number("frequency_rad_s")),
        "variance of a sea", c -> sea(c).momentOf(0),
        "peak period of chop", c -> ChopSpectrum.of(c.number("significant_height_m")).peakPeriod(),
        "level of a spectrum's tail", WaveChecks::level,
        "normalising factor of an enhanced peak", WaveChecks::normalising,
        "wavenumber of a wave", c -> wave(c).wavenumber(),
        "phase speed of a wave", c -> wave(c).frequency() / wave(c).wavenumber(),
        "speed of the water in a wave", c -> wave(c).orbital(c.number("depth_m")));
  }

  private static double zeroCrossing(Conditions c) {
    ChopSpectrum sea = sea(c);
    return 2 * Math.PI * Math.sqrt(sea.momentOf(0) / sea.momentOf(2));
  }

  private static double mean(Conditions c) {
    ChopSpectrum sea = sea(c);
    return 2 * Math.PI * sea.momentOf(0) / sea.momentOf(1);
  }

  /** Phillips's parameter: density times frequency to the fifth over gravity squared. */
  private static double level(Conditions c) {
    double gravity = c.number("gravity_m_s2");
    return tail(sea(c)) / (gravity * gravity);
  }

  /** The tail over that of a sea of the same height and period whose peak is not enhanced. */
  private static double normalising(Conditions c) {
    ChopSpectrum sea = sea(c);
    double peak = 2 * Math.PI / sea.peakPeriod();
    return tail(sea) / (PLAIN_TAIL * sea.momentOf(0) * Math.pow(peak, 4));
  }

  private static double tail(ChopSpectrum sea) {
    double omega = FAR_ABOVE_PEAK * 2 * Math.PI / sea.peakPeriod();
    return sea.density(omega) * Math.pow(omega, 5);
  }

  private static ChopSpectrum sea(Conditions c) {
    return ChopSpectrum.of(
        c.number("significant_height_m"), c.number("peak_period_s"), c.number("enhancement"));
  }

  private static ChopWave wave(Conditions c) {
    double wanted = c.number("frequency_rad_s");
    double amplitude = c.has("amplitude_m") ? c.number("amplitude_m") : 1;
    return ChopWave.against(amplitude, wanted, 0, Craft.GRAVITY);
  }
}
