package trimwright.reference.second;

import java.util.function.DoubleUnaryOperator;

/**
 * Lifting line by Glauert's series of odd sines, collocated (H. Glauert, The Elements of Aerofoil
 * and Airscrew Theory, 1926, chapter XI).
 *
 * @param liftSlope [1/rad]
 * @param extraDrag induced drag over that of the ellipse, less 1 [1]
 */
record LiftingLine(double liftSlope, double extraDrag) {

  /**
   * A wing without twist.
   *
   * @param aspectRatio [1]
   * @param outline chord over root chord against the fraction of the half span
   * @param sectionSlope [1/rad]
   * @param terms of the series
   */
  static LiftingLine of(
      double aspectRatio, DoubleUnaryOperator outline, double sectionSlope, int terms) {
    // Span 1; the outline's mean is found with many more points than terms.
    int points = 20_000;
    double mean = 0;
    for (int i = 0; i < points; i++) {
      mean += outline.applyAsDouble((i + 0.5) / points) / points;
    }
    double[][] a = new double[terms][terms];
    double[] b = new double[terms];
    for (int i = 0; i < terms; i++) {
      double theta = (i + 0.5) * Math.PI / 2 / terms;
      double chord = outline.applyAsDouble(Math.cos(theta)) / mean / aspectRatio;
      double mu = sectionSlope * chord / 4;
      for (int j = 0; j < terms; j++) {
        int n = 2 * j + 1;
        a[i][j] = Math.sin(n * theta) * (n * mu + Math.sin(theta));
      }
      b[i] = mu * Math.sin(theta);
    }
    double[] x = Gauss.solve(a, b);
    double extra = 0;
    for (int j = 1; j < terms; j++) {
      double share = x[j] / x[0];
      extra += (2 * j + 1) * share * share;
    }
    return new LiftingLine(Math.PI * aspectRatio * x[0], extra);
  }
}
