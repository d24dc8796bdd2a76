package trimwright.kernel.quick;

/**
 * Pitches of a table with the cubic through the four nodes around, as {@code
 * trimwright.kernel.numeric.NodeTable} has it, in a form that reads in some nanoseconds: divided
 * differences with the reciprocals of all distances worked out. Immutable.
 */
final class PitchNodes {
  /** A cubic in Newton's form about its nodes x0, x1, x2. */
  record Cubic(double x0, double x1, double x2, double c0, double c1, double c2, double c3) {
    double value(double x) {
      return c0 + (x - x0) * (c1 + (x - x1) * (c2 + (x - x2) * c3));
    }

    double slope(double x) {
      double a = x - x0;
      double b = x - x1;
      double inner = c2 + (x - x2) * c3;
      return c1 + b * inner + a * (inner + b * c3);
    }
  }

  private final double[] x;

  /** Reciprocals of the distance to the next node, to that after it, and to the third. */
  private final double[] one;

  private final double[] two;
  private final double[] three;

  /**
   * Nodes.
   *
   * @param pitches at least four, rising [rad]; kept, not to be changed
   */
  PitchNodes(double[] pitches) {
    x = pitches;
    one = reciprocals(1);
    two = reciprocals(2);
    three = reciprocals(3);
  }

  private double[] reciprocals(int apart) {
    double[] out = new double[x.length - apart];
    for (int i = 0; i < out.length; i++) {
      out[i] = 1 / (x[i + apart] - x[i]);
    }
    return out;
  }

  int count() {
    return x.length;
  }

  double pitch(int node) {
    return x[node];
  }

  double from() {
    return x[0];
  }

  double to() {
    return x[x.length - 1];
  }

  /** The interval that a pitch lies in; the first or last for pitches outside. */
  int interval(double pitch) {
    int i = 0;
    while (i < x.length - 2 && x[i + 1] <= pitch) {
      i++;
    }
    return i;
  }

  /**
   * The cubic of an interval.
   *
   * @param row values, the function's first at {@code offset}
   */
  Cubic cubic(int interval, double[] row, int offset) {
    int i = Math.max(0, Math.min(interval - 1, x.length - 4));
    double y0 = row[offset + i];
    double y1 = row[offset + i + 1];
    double y2 = row[offset + i + 2];
    double y3 = row[offset + i + 3];
    double d01 = (y1 - y0) * one[i];
    double d12 = (y2 - y1) * one[i + 1];
    double d23 = (y3 - y2) * one[i + 2];
    double d012 = (d12 - d01) * two[i];
    double d123 = (d23 - d12) * two[i + 1];
    return new Cubic(x[i], x[i + 1], x[i + 2], y0, d01, d012, (d123 - d012) * three[i]);
  }

  double value(double pitch, double[] row, int offset) {
    return cubic(interval(pitch), row, offset).value(pitch);
  }
}
