package trimwright.kernel.numeric;

/**
 * Gauss-Legendre quadrature on an interval: exact for polynomials up to twice the number of nodes
 * less one (M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, 25.4.29; the
 * nodes by Newton's method on the Legendre polynomials' recurrence, 22.7.10). Immutable; may be
 * shared between threads.
 */
public final class GaussLegendre {
  private static final int NEWTON_STEPS = 20;

  private final double[] node;
  private final double[] weight;

  private GaussLegendre(double[] node, double[] weight) {
    this.node = node;
    this.weight = weight;
  }

  /**
   * A rule.
   *
   * @param nodes how many, at least 1
   * @return the rule
   */
  public static GaussLegendre of(int nodes) {
    if (nodes < 1) {
      throw new IllegalArgumentException("a rule needs at least 1 node, was " + nodes);
    }
    double[] node = new double[nodes];
    double[] weight = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      double x = -Math.cos(Math.PI * (i + 0.75) / (nodes + 0.5));
      double slope = 1;
      for (int step = 0; step < NEWTON_STEPS; step++) {
        double before = 1;
        double value = x;
        for (int n = 2; n <= nodes; n++) {
          double next = ((2 * n - 1) * x * value - (n - 1) * before) / n;
          before = value;
          value = next;
        }
        slope = nodes == 1 ? 1 : nodes * (x * value - before) / (x * x - 1);
        double change = value / slope;
        x -= change;
        if (Math.abs(change) < 1e-15) {
          break;
        }
      }
      node[i] = x;
      weight[i] = 2 / ((1 - x * x) * slope * slope);
    }
    return new GaussLegendre(node, weight);
  }

  /** How many nodes. */
  public int size() {
    return node.length;
  }

  /** A node moved to an interval. */
  public double node(int i, double from, double to) {
    return 0.5 * (from + to) + 0.5 * (to - from) * node[i];
  }

  /** Its weight there. */
  public double weight(int i, double from, double to) {
    return 0.5 * (to - from) * weight[i];
  }
}
