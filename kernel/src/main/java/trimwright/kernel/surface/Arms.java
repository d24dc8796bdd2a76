package trimwright.kernel.surface;

import java.util.Arrays;

/** From one vortex point to many targets: three components and the distance. */
final class Arms {
  /**
   * Guard of a segment's denominator: on the segment's own line numerator and denominator both
   * vanish; this makes the quotient 0 there and changes nothing elsewhere (1e-9 at right angles).
   */
  static final double OFF_LINE = 1 + 1e-9;

  final double[] x;
  final double[] y;
  final double[] z;
  final double[] r;

  Arms(int count) {
    x = new double[count];
    y = new double[count];
    z = new double[count];
    r = new double[count];
  }

  /** Arms to the targets from one number up to another. */
  void from(double fromX, double fromY, double fromZ, Targets targets, int begin, int n) {
    difference(targets.x, fromX, x, begin, n);
    difference(targets.y, fromY, y, begin, n);
    difference(targets.z, fromZ, z, begin, n);
    length(x, y, z, r, begin, n);
  }

  void clear() {
    Arrays.fill(x, 0);
    Arrays.fill(y, 0);
    Arrays.fill(z, 0);
  }

  /** Adds a multiple of other components. */
  void add(Arms other, double factor) {
    Columns.add(factor, other.x, 0, x, 0, x.length);
    Columns.add(factor, other.y, 0, y, 0, y.length);
    Columns.add(factor, other.z, 0, z, 0, z.length);
  }

  private static void difference(double[] to, double from, double[] out, int begin, int n) {
    for (int t = begin; t < n; t++) {
      out[t] = to[t] - from;
    }
  }

  private static void length(double[] x, double[] y, double[] z, double[] out, int begin, int n) {
    for (int t = begin; t < n; t++) {
      out[t] = Math.sqrt(x[t] * x[t] + y[t] * y[t] + z[t] * z[t]);
    }
  }
}
