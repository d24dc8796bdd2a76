package trimwright.reference.second;

import java.util.function.DoubleUnaryOperator;

/** Integrals and small plane problems. */
final class PlaneIntegrals {
  private PlaneIntegrals() {}

  /**
   * Interference of two equal elliptic loadings one above the other: mutual over own induced drag.
   * With the trailing strength as the cosine, the energy is the double integral of the logarithm of
   * distance; alone it is pi squared.
   */
  static double biplaneFactor(double gapOverSpan, int points) {
    double sum = 0;
    for (int i = 0; i < points; i++) {
      double a = Math.cos((i + 0.5) * Math.PI / points);
      for (int j = 0; j < points; j++) {
        double b = Math.cos((j + 0.5) * Math.PI / points);
        double apart = a - b;
        sum -= a * b * Math.log(apart * apart + 4 * gapOverSpan * gapOverSpan);
      }
    }
    return sum / points / points;
  }

  /** Lift of a flat plate under a surface of constant pressure over that in deep water. */
  static double plateRatio(double depthInChords, int vortices) {
    return plate(depthInChords, vortices, true) / plate(depthInChords, vortices, false);
  }

  private static double plate(double depth, int n, boolean image) {
    double[][] a = new double[n][n];
    double[] b = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double d = (i - j + 0.5) / n;
        a[i][j] = 1 / d + (image ? d / (d * d + 4 * depth * depth) : 0);
      }
      b[i] = 1;
    }
    double sum = 0;
    for (double strength : Gauss.solve(a, b)) {
      sum += strength;
    }
    return sum;
  }

  /** Zero-lift angle [rad] and moment about the quarter chord of a mean line, from its slope. */
  static double[] meanLine(DoubleUnaryOperator slope, int steps) {
    double angle = 0;
    double a1 = 0;
    double a2 = 0;
    for (int i = 0; i < steps; i++) {
      double theta = (i + 0.5) * Math.PI / steps;
      double s = slope.applyAsDouble(0.5 * (1 - Math.cos(theta)));
      angle -= s * (Math.cos(theta) - 1) / steps;
      a1 += 2 * s * Math.cos(theta) / steps;
      a2 += 2 * s * Math.cos(2 * theta) / steps;
    }
    return new double[] {angle, Math.PI / 4 * (a2 - a1)};
  }
}
