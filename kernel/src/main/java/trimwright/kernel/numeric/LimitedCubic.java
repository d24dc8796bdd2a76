package trimwright.kernel.numeric;

/**
 * The piecewise cubic through points that never overshoots them: between two points it stays
 * between their ordinates. Once continuously differentiable; beyond the ends it goes on as a
 * straight line.
 *
 * <p>Slopes by F. N. Fritsch and J. Butland (SIAM J. Sci. Stat. Comput. 5, 1984): the weighted
 * harmonic mean of the slopes on both sides, 0 at an extreme. Immutable; may be shared between
 * threads.
 */
public final class LimitedCubic {
  private final double[] at;
  private final double[] value;
  private final double[] slope;

  /**
   * The cubic through the points.
   *
   * @param at abscissae, strictly rising, at least 2; not kept
   * @param value ordinates, as many; not kept
   * @throws IllegalArgumentException if the arrays differ in length, are too short, or {@code at}
   *     does not rise
   */
  public LimitedCubic(double[] at, double[] value) {
    this(at, value, false);
  }

  /**
   * The cubic through the points that is level at both ends, so that it goes on at their ordinates.
   *
   * @param at as for the other
   * @param value as for the other
   * @return the curve
   * @throws IllegalArgumentException as the other
   */
  public static LimitedCubic levelAtEnds(double[] at, double[] value) {
    return new LimitedCubic(at, value, true);
  }

  private LimitedCubic(double[] at, double[] value, boolean level) {
    int n = at.length;
    if (n < 2 || value.length != n) {
      throw new IllegalArgumentException(
          "a curve needs at least 2 points and as many ordinates as abscissae, had "
              + n
              + " and "
              + value.length);
    }
    for (int i = 1; i < n; i++) {
      if (!(at[i] > at[i - 1])) {
        throw new IllegalArgumentException(
            "abscissae must rise, had " + at[i - 1] + " before " + at[i]);
      }
    }
    this.at = at.clone();
    this.value = value.clone();
    slope = new double[n];
    if (!level) {
      slope[0] = secant(0);
      slope[n - 1] = secant(n - 2);
    }
    for (int i = 1; i < n - 1; i++) {
      slope[i] = middleSlope(i);
    }
  }

  private double secant(int i) {
    return (value[i + 1] - value[i]) / (at[i + 1] - at[i]);
  }

  private double middleSlope(int i) {
    double before = secant(i - 1);
    double after = secant(i);
    if (!(before * after > 0)) {
      return 0;
    }
    double h1 = at[i] - at[i - 1];
    double h2 = at[i + 1] - at[i];
    double w1 = 2 * h2 + h1;
    double w2 = h2 + 2 * h1;
    return (w1 + w2) / (w1 / before + w2 / after);
  }

  /**
   * Slope at one of the points.
   *
   * @param i its number, from 0
   */
  public double slopeAtNode(int i) {
    return slope[i];
  }

  /** Value at an abscissa. */
  public double value(double x) {
    int n = at.length;
    if (x <= at[0]) {
      return value[0] + (x - at[0]) * slope[0];
    }
    if (x >= at[n - 1]) {
      return value[n - 1] + (x - at[n - 1]) * slope[n - 1];
    }
    int i = segment(x);
    double h = at[i + 1] - at[i];
    double t = (x - at[i]) / h;
    double u = 1 - t;
    return u * u * ((1 + 2 * t) * value[i] + t * h * slope[i])
        + t * t * ((1 + 2 * u) * value[i + 1] - u * h * slope[i + 1]);
  }

  /** Slope at an abscissa. */
  public double slope(double x) {
    int n = at.length;
    if (x <= at[0]) {
      return slope[0];
    }
    if (x >= at[n - 1]) {
      return slope[n - 1];
    }
    int i = segment(x);
    double h = at[i + 1] - at[i];
    double t = (x - at[i]) / h;
    double rise = (value[i + 1] - value[i]) / h;
    return 6 * t * (1 - t) * rise
        + (1 - t) * (1 - 3 * t) * slope[i]
        + t * (3 * t - 2) * slope[i + 1];
  }

  private int segment(double x) {
    int found = java.util.Arrays.binarySearch(at, x);
    int i = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(at.length - 2, i));
  }
}
