package trimwright.kernel.numeric;

import java.util.Arrays;

/**
 * The natural cubic spline through points: twice continuously differentiable, second derivative
 * zero at both ends. Beyond the ends it goes on as a straight line.
 *
 * <p>Source: any numerical textbook, for example de Boor, A Practical Guide to Splines, chapter IV.
 * Error falls with the fourth power of the spacing away from the ends and with its square near
 * them.
 */
public final class CubicSpline {
  private final double[] at;
  private final double[] value;
  private final double[] curvature;

  private CubicSpline(double[] at, double[] value, double[] curvature) {
    this.at = at;
    this.value = value;
    this.curvature = curvature;
  }

  /**
   * The natural spline through the points.
   *
   * @param at abscissae, strictly rising, at least 2
   * @param value ordinates, as many
   * @return the spline
   * @throws IllegalArgumentException if the arrays differ in length, are too short, or {@code at}
   *     does not rise
   */
  public static CubicSpline natural(double[] at, double[] value) {
    int n = at.length;
    if (n < 2 || value.length != n) {
      throw new IllegalArgumentException(
          "a spline needs at least 2 points and as many ordinates as abscissae, had "
              + n
              + " and "
              + value.length);
    }
    for (int i = 1; i < n; i++) {
      if (!(at[i] > at[i - 1])) {
        throw new IllegalArgumentException(
            "spline abscissae must rise, had " + at[i - 1] + " before " + at[i]);
      }
    }
    return new CubicSpline(at.clone(), value.clone(), curvatures(at, value));
  }

  /**
   * Second derivatives at the points, from the tridiagonal conditions of a continuous slope
   * (Thomas's algorithm).
   */
  private static double[] curvatures(double[] at, double[] value) {
    int n = at.length;
    double[] upper = new double[n];
    double[] m = new double[n];
    for (int i = 1; i < n - 1; i++) {
      double before = at[i] - at[i - 1];
      double after = at[i + 1] - at[i];
      double jump = (value[i + 1] - value[i]) / after - (value[i] - value[i - 1]) / before;
      double pivot = 2 * (before + after) - before * upper[i - 1];
      upper[i] = after / pivot;
      m[i] = (6 * jump - before * m[i - 1]) / pivot;
    }
    m[n - 1] = 0;
    for (int i = n - 2; i > 0; i--) {
      m[i] -= upper[i] * m[i + 1];
    }
    return m;
  }

  /**
   * Value of the spline.
   *
   * @param x abscissa
   */
  public double value(double x) {
    int n = at.length;
    if (x < at[0]) {
      return value[0] + (x - at[0]) * slopeInside(0, at[0]);
    }
    if (x > at[n - 1]) {
      return value[n - 1] + (x - at[n - 1]) * slopeInside(n - 2, at[n - 1]);
    }
    int i = segment(x);
    double h = at[i + 1] - at[i];
    double a = (at[i + 1] - x) / h;
    double b = (x - at[i]) / h;
    return a * value[i]
        + b * value[i + 1]
        + h * h / 6 * (a * (a * a - 1) * curvature[i] + b * (b * b - 1) * curvature[i + 1]);
  }

  /**
   * First derivative of the spline.
   *
   * @param x abscissa
   */
  public double slope(double x) {
    double inside = Math.max(at[0], Math.min(at[at.length - 1], x));
    return slopeInside(segment(inside), inside);
  }

  private double slopeInside(int i, double x) {
    double h = at[i + 1] - at[i];
    double a = (at[i + 1] - x) / h;
    double b = (x - at[i]) / h;
    return (value[i + 1] - value[i]) / h
        + h / 6 * ((3 * b * b - 1) * curvature[i + 1] - (3 * a * a - 1) * curvature[i]);
  }

  private int segment(double x) {
    int found = Arrays.binarySearch(at, x);
    int i = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(at.length - 2, i));
  }
}
