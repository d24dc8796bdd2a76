package trimwright.kernel.layer;

/**
 * A layer of Falkner and Skan by shooting: f''' + f f'' + β (1 - f'²) = 0 from f''(0), β being
 * sought so that f' tends to 1. Independent of the shipped table, which a boundary value solver
 * made.
 */
record SimilarLayer(
    double beta, double shape, double energy, double shear, double dissipation, double gradient) {
  private static final double FAR = 12;
  private static final int STEPS = 2400;

  static SimilarLayer of(double wallShear, double betaGuess) {
    double b0 = betaGuess;
    double b1 = betaGuess + 1e-3;
    double r0 = shoot(wallShear, b0)[1] - 1;
    for (int i = 0; i < 60 && Math.abs(b1 - b0) > 1e-13; i++) {
      double r1 = shoot(wallShear, b1)[1] - 1;
      double next = b1 - r1 * (b1 - b0) / (r1 - r0);
      b0 = b1;
      r0 = r1;
      b1 = next;
    }
    double[] end = shoot(wallShear, b1);
    double displacement = FAR - end[0];
    double momentum = end[3];
    return new SimilarLayer(
        b1,
        displacement / momentum,
        end[4] / momentum,
        momentum * wallShear,
        momentum * end[5],
        b1 * momentum * momentum);
  }

  /** f, f', f'' and the integrals of f'(1 - f'), f'(1 - f'²), f''². */
  private static double[] shoot(double wallShear, double beta) {
    double[] y = {0, 0, wallShear, 0, 0, 0};
    double h = FAR / STEPS;
    for (int i = 0; i < STEPS; i++) {
      double[] k1 = slope(y, beta);
      double[] k2 = slope(add(y, k1, h / 2), beta);
      double[] k3 = slope(add(y, k2, h / 2), beta);
      double[] k4 = slope(add(y, k3, h), beta);
      for (int k = 0; k < y.length; k++) {
        y[k] += h / 6 * (k1[k] + 2 * k2[k] + 2 * k3[k] + k4[k]);
      }
    }
    return y;
  }

  private static double[] add(double[] y, double[] k, double h) {
    double[] sum = new double[y.length];
    for (int i = 0; i < y.length; i++) {
      sum[i] = y[i] + h * k[i];
    }
    return sum;
  }

  private static double[] slope(double[] y, double beta) {
    double u = y[1];
    return new double[] {
      u, y[2], -y[0] * y[2] - beta * (1 - u * u), u * (1 - u), u * (1 - u * u), y[2] * y[2]
    };
  }
}
