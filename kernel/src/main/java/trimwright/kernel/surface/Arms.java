package trimwright.kernel.surface;

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

  void from(double fromX, double fromY, double fromZ, Targets targets, int n) {
    difference(targets.x, fromX, x, n);
    difference(targets.y, fromY, y, n);
    difference(targets.z, fromZ, z, n);
    length(x, y, z, r, n);
  }

  private static void difference(double[] to, double from, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] = to[t] - from;
    }
  }

  private static void length(double[] x, double[] y, double[] z, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] = Math.sqrt(x[t] * x[t] + y[t] * y[t] + z[t] * z[t]);
    }
  }
}
