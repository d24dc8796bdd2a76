package trimwright.kernel.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The wind sea of a case: how the energy of its chop is spread over frequency, and waves that make
 * it up.
 *
 * <p>The case's height of chop, crest to trough, is taken as the significant height, 4 sqrt(m0):
 * the mean of the highest third of the waves, which is about what people on the water name when
 * asked. The shape is that of a young sea ({@code PeakedShape}: Hasselmann et al. 1973) with their
 * mean enhancement of the peak, 3.3, scaled so that 4 sqrt(m0) is the height by quadrature; the
 * usual factor 1 - 0.287 ln(enhancement) comes within 0.3 % of that.
 *
 * <p>Its period is chosen: a significant steepness 2 pi H / (g Tp²) of {@value #STEEPNESS}. Growth
 * with fetch, g H/U² = 0.0016 (g X/U²)^(1/2) and g Tp/U = 0.286 (g X/U²)^(1/3) (Shore Protection
 * Manual 1984 after Hasselmann et al. 1973, second hand), gives 0.123 (g X/U²)^(-1/6): 0.06 on 300
 * m of open water in 6 m/s of wind, 0.048 on 1 km, 0.037 on 5 km. API RP 2MET (2014, as quoted)
 * gives 1/16 to 1/20 in severe seas. Swell and boats' wakes are flatter and have periods of their
 * own.
 *
 * <p>Long-crested: all of it runs one way. Immutable; may be shared between threads.
 */
public final class ChopSpectrum {
  /** Significant steepness 2 pi H / (g Tp²) of chop [1], chosen. */
  public static final double STEEPNESS = 0.05;

  /** Mean enhancement of the peak in the North Sea (Hasselmann et al. 1973) [1]. */
  public static final double ENHANCEMENT = 3.3;

  /** Standard gravity [m/s²]. */
  private static final double GRAVITY = 9.80665;

  private final double significantHeight;
  private final double peakPeriod;
  private final PeakedShape shape;

  private ChopSpectrum(double significantHeight, double peakPeriod, double enhancement) {
    this.significantHeight = significantHeight;
    this.peakPeriod = peakPeriod;
    this.shape = new PeakedShape(enhancement);
  }

  /**
   * Chop of a height, with the period of its chosen steepness.
   *
   * @param significantHeight crest to trough [m], 0 for still water
   * @return its spectrum
   * @throws IllegalArgumentException if the height is below 0 or not finite
   */
  public static ChopSpectrum of(double significantHeight) {
    checkHeight(significantHeight);
    double period = Math.sqrt(2 * Math.PI * significantHeight / (GRAVITY * STEEPNESS));
    return new ChopSpectrum(significantHeight, period, ENHANCEMENT);
  }

  /**
   * Waves of a height and a period.
   *
   * @param significantHeight crest to trough [m], 0 for still water
   * @param peakPeriod at which the spectrum is highest [s], above 0
   * @return their spectrum
   * @throws IllegalArgumentException if one of the two is outside its range
   */
  public static ChopSpectrum of(double significantHeight, double peakPeriod) {
    return of(significantHeight, peakPeriod, ENHANCEMENT);
  }

  /**
   * Waves of a height, a period and an enhancement of the peak.
   *
   * @param significantHeight crest to trough [m], 0 for still water
   * @param peakPeriod at which the spectrum is highest [s], above 0
   * @param enhancement 1, a fully grown sea, to 7 [1]
   * @return their spectrum
   * @throws IllegalArgumentException if one of the three is outside its range
   */
  public static ChopSpectrum of(double significantHeight, double peakPeriod, double enhancement) {
    checkHeight(significantHeight);
    if (!(peakPeriod > 0) || !Double.isFinite(peakPeriod)) {
      throw new IllegalArgumentException(
          "peak period of waves must be above 0 s, was " + peakPeriod + " s");
    }
    if (!(enhancement >= 1 && enhancement <= 7)) {
      throw new IllegalArgumentException(
          "enhancement of a spectrum's peak must be 1 to 7, was " + enhancement);
    }
    return new ChopSpectrum(significantHeight, peakPeriod, enhancement);
  }

  private static void checkHeight(double height) {
    if (!(height >= 0) || !Double.isFinite(height)) {
      throw new IllegalArgumentException(
          "height of waves must be 0 m or more, was " + height + " m");
    }
  }

  /** Four times the root of the surface's variance [m]. */
  public double significantHeight() {
    return significantHeight;
  }

  /** Period of the spectrum's peak [s]; 0 for still water of no given period. */
  public double peakPeriod() {
    return peakPeriod;
  }

  /**
   * The surface's variance per frequency.
   *
   * @param omega frequency seen from still water [rad/s], above 0
   * @return [m² s]
   */
  public double density(double omega) {
    if (isStill()) {
      return 0;
    }
    double x = omega / peak();
    return variance() * shape.density(x) / (shape.total() * peak());
  }

  /**
   * The integral of density times frequency to a power.
   *
   * @param order the power, 0 to 3; the fourth grows without limit with the shortest waves
   * @return [m² (rad/s)^order]
   * @throws IllegalArgumentException if the order is none of these
   */
  public double momentOf(int order) {
    double share = shape.moment(order) / shape.total();
    return isStill() ? 0 : variance() * share * Math.pow(peak(), order);
  }

  /**
   * Waves that make up this sea, running against the craft.
   *
   * <p>Bands of equal energy, one wave for each: no wave is spent on a flank where there is little
   * energy, and the frequencies lie unevenly, so that the sum does not repeat itself soon. Each has
   * the frequency whose square is its band's mean: the variance of the surface and that of its
   * velocity are those of the spectrum for any count. Amplitudes are fixed, phases drawn: with few
   * waves, groups vary less than at sea (M. J. Tucker, P. G. Challenor, D. J. T. Carter, Applied
   * Ocean Research 6, 1984, from memory).
   *
   * @param count how many, at least 1
   * @param seed of the phases: the same seed gives the same waves, on every machine
   * @return longest waves first; none for still water
   * @throws IllegalArgumentException if the count is below 1
   */
  public List<ChopWave> components(int count, long seed) {
    if (count < 1) {
      throw new IllegalArgumentException("a sea is made of at least 1 wave, was " + count);
    }
    if (isStill()) {
      return List.of();
    }
    // Its sequence is part of the language's specification, so it is the same everywhere.
    Random random = new Random(seed);
    double amplitude = Math.sqrt(2 * variance() / count);
    List<ChopWave> waves = new ArrayList<>();
    for (double x : shape.evenBands(count)) {
      double phase = 2 * Math.PI * random.nextDouble();
      waves.add(ChopWave.against(amplitude, x * peak(), phase, GRAVITY));
    }
    return List.copyOf(waves);
  }

  private boolean isStill() {
    return significantHeight == 0;
  }

  private double variance() {
    return significantHeight * significantHeight / 16;
  }

  /** Frequency of the peak [rad/s]. */
  private double peak() {
    return 2 * Math.PI / peakPeriod;
  }
}
