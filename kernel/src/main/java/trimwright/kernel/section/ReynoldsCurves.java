package trimwright.kernel.section;

import trimwright.kernel.numeric.LimitedCubic;

/**
 * Numbers over the logarithm of the Reynolds number, all at the same nodes: curves as {@link
 * LimitedCubic} lays them, their slopes at the nodes worked out once, so that all numbers at a
 * place cost a few steps each. Immutable; may be shared between threads.
 */
final class ReynoldsCurves {
  private final double[] at;

  /** By node, then by number. */
  private final double[][] values;

  private final double[][] slopes;

  /**
   * Curves.
   *
   * @param at nodes, rising, at least 2 [1]; not copied
   * @param values by node, then by number; not copied
   */
  ReynoldsCurves(double[] at, double[][] values) {
    this.at = at;
    this.values = values;
    slopes = new double[at.length][values[0].length];
    double[] column = new double[at.length];
    for (int k = 0; k < values[0].length; k++) {
      for (int r = 0; r < at.length; r++) {
        column[r] = values[r][k];
      }
      LimitedCubic curve = new LimitedCubic(at, column);
      for (int r = 0; r < at.length; r++) {
        slopes[r][k] = curve.slopeAtNode(r);
      }
    }
  }

  /** All numbers at a place; before the first node and behind the last those of that node. */
  double[] value(double place) {
    int last = at.length - 1;
    if (place <= at[0]) {
      return values[0].clone();
    }
    if (place >= at[last]) {
      return values[last].clone();
    }
    int i = 0;
    while (at[i + 1] <= place) {
      i++;
    }
    double h = at[i + 1] - at[i];
    double t = (place - at[i]) / h;
    double u = 1 - t;
    double before = u * u * (1 + 2 * t);
    double after = t * t * (1 + 2 * u);
    double risingBefore = u * u * t * h;
    double risingAfter = -t * t * u * h;
    double[] v0 = values[i];
    double[] v1 = values[i + 1];
    double[] s0 = slopes[i];
    double[] s1 = slopes[i + 1];
    double[] out = new double[v0.length];
    for (int k = 0; k < out.length; k++) {
      out[k] = before * v0[k] + after * v1[k] + risingBefore * s0[k] + risingAfter * s1[k];
    }
    return out;
  }
}
