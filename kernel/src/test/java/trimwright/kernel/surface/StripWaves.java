package trimwright.kernel.surface;

/**
 * A second way to {@link WaveWash} for one line: strips of any loading in place of an elliptical
 * one, and a plain rule in place of a fitted one. What surface waves add to a wing near the surface
 * at one speed: drag, and the wash at the wing itself. The lattice has the surface as one of
 * constant pressure without gravity (an image of the same sense), which is the limit of high speed;
 * here stand the whole waves of a lifting line and what they differ by from that limit.
 *
 * <p>Linear waves on deep water, steady stream, the wing's circulation gathered on a straight line
 * across the stream at one depth, constant over each strip. For a loading that varies along the
 * span as exp(i k y) the surface's condition leaves free waves of total wave number
 *
 * <pre>  n = (g/V² + sqrt((g/V²)² + 4 k²)) / 2</pre>
 *
 * and the circulation c feels the upwash and the drag per span
 *
 * <pre>  w = -c n exp(-2 n h) / (2 - (g/V²)/n),   D = rho c² n exp(-2 n h) / (2 - (g/V²)/n)</pre>
 *
 * besides those of a rigid wall's image. Where k vanishes this is the two-dimensional vortex's wave
 * drag, rho g c²/V² exp(-2 g h/V²); where the speed grows, waves and wall together become the image
 * of the same sense. Derived from the linear condition by transforming along stream and span, waves
 * downstream only; J. V. Wehausen and E. V. Laitone, Surface Waves, Handbuch der Physik IX (1960),
 * treat the same problem (not in hand, the derivation here is our own).
 *
 * <p>Valid for small disturbances, without spray or breaking, and deep water: in water shallower
 * than about half the wave's length, pi V²/g, waves are others. Immutable; may be shared between
 * threads.
 */
final class StripWaves {
  /** Standard gravity [m/s²]. */
  private static final double GRAVITY = 9.80665;

  /** Where exp(-2 k h) has vanished beside all else: 2 k h at the integral's end [1]. */
  private static final double FAR = 36;

  /** Largest step of the phase k y along the integral [rad]; the rest is far below 1e-6. */
  private static final double PHASE_STEP = 0.2;

  private static final int LEAST_STEPS = 4096;

  private final double[] width;
  private final double[][] whole;
  private final double[][] beyondImage;

  private StripWaves(double[] width, double[][] whole, double[][] beyondImage) {
    this.width = width;
    this.whole = whole;
    this.beyondImage = beyondImage;
  }

  /**
   * Waves of a lifting line of given strips.
   *
   * @param edges distance of the strips' edges from the plane of symmetry, rising from 0 to the
   *     half span [m]; the other half mirrors them
   * @param depth of the line below the still surface, above 0 [m]
   * @param speed above 0 [m/s]
   * @return the waves
   * @throws IllegalArgumentException if a number lies outside these
   */
  static StripWaves of(double[] edges, double depth, double speed) {
    if (edges.length < 2 || edges[0] != 0) {
      throw new IllegalArgumentException("a line needs strips from 0 to the half span");
    }
    for (int j = 1; j < edges.length; j++) {
      if (!(edges[j] > edges[j - 1])) {
        throw new IllegalArgumentException(
            "edges must rise, were " + edges[j - 1] + " and " + edges[j]);
      }
    }
    if (!(depth > 0)) {
      throw new IllegalArgumentException("depth must be above 0 m, was " + depth);
    }
    if (!(speed > 0)) {
      throw new IllegalArgumentException("speed must be above 0 m/s, was " + speed);
    }
    return solve(edges, depth, GRAVITY / (speed * speed));
  }

  private static StripWaves solve(double[] edges, double depth, double waveNumber) {
    int n = edges.length - 1;
    double[] width = new double[n];
    for (int j = 0; j < n; j++) {
      width[j] = edges[j + 1] - edges[j];
    }
    double[][] whole = new double[n][n];
    double[][] beyond = new double[n][n];
    double end = FAR / (2 * depth);
    int steps = Math.max(LEAST_STEPS, 2 * (int) Math.ceil(end * edges[n] / (2 * PHASE_STEP)));
    double step = end / steps;
    double[] shape = new double[n];
    for (int s = 0; s <= steps; s++) {
      double k = s * step;
      for (int j = 0; j < n; j++) {
        shape[j] = k == 0 ? width[j] : (Math.sin(k * edges[j + 1]) - Math.sin(k * edges[j])) / k;
      }
      // Simpson's rule; both halves of the span and of the wave numbers are in the factor of 2.
      double weight = s == 0 || s == steps ? 1 : s % 2 == 1 ? 4 : 2;
      double factor = 2 / Math.PI * weight * step / 3;
      double waves = kernel(k, depth, waveNumber);
      double image = 0.5 * k * Math.exp(-2 * k * depth);
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          double both = factor * shape[i] * shape[j] / width[i];
          whole[i][j] += both * waves;
          beyond[i][j] += both * (waves - image);
        }
      }
    }
    return new StripWaves(width, whole, beyond);
  }

  /** Downwash of the free waves on a unit loading of that wave number along the span [1/m]. */
  private static double kernel(double k, double depth, double waveNumber) {
    double n = 0.5 * (waveNumber + Math.sqrt(waveNumber * waveNumber + 4 * k * k));
    return n * Math.exp(-2 * n * depth) / (2 - waveNumber / n);
  }

  /**
   * Drag of the whole wave system: what the waves carry off. A rigid wall's image, which lowers the
   * induced drag, is not in it.
   *
   * @param circulation of each strip, one half [m²/s]
   * @param density of the water [kg/m³]
   * @return both halves [N], never negative
   */
  double waveDrag(double[] circulation, double density) {
    return drag(whole, circulation, density);
  }

  /**
   * Drag to be added to that of a lattice with the image of the same sense.
   *
   * @param circulation of each strip, one half [m²/s]
   * @param density of the water [kg/m³]
   * @return both halves [N]
   */
  double dragBeyondImage(double[] circulation, double density) {
    return drag(beyondImage, circulation, density);
  }

  /**
   * Upwash to be added to that of a lattice with the image of the same sense, mean over each strip.
   *
   * @param circulation of each strip, one half, positive where it lifts [m²/s]
   * @return up positive [m/s]
   */
  double[] upwashBeyondImage(double[] circulation) {
    double[] upwash = new double[width.length];
    for (int i = 0; i < upwash.length; i++) {
      upwash[i] = -row(beyondImage[i], circulation);
    }
    return upwash;
  }

  private double drag(double[][] matrix, double[] circulation, double density) {
    double sum = 0;
    for (int i = 0; i < width.length; i++) {
      sum += width[i] * circulation[i] * row(matrix[i], circulation);
    }
    return 2 * density * sum;
  }

  private static double row(double[] row, double[] circulation) {
    double sum = 0;
    for (int j = 0; j < row.length; j++) {
      sum += row[j] * circulation[j];
    }
    return sum;
  }
}
