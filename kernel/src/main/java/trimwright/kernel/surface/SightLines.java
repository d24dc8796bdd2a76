package trimwright.kernel.surface;

/**
 * From one end of vortex lines to many points at once: the same law as {@link VortexLine}, written
 * as loops without a branch that the compiler turns into vector instructions, each root drawn once
 * for all lines that meet at the end. On a line itself the velocity falls smoothly to nothing
 * instead of being cut off.
 *
 * <p>One object is one workspace: not for use by two threads.
 */
final class SightLines {
  private static final double QUARTER_OVER_PI = 0.25 / Math.PI;

  /** Square of the sine of an angle to a line below which a point counts as on it. */
  private static final double ON_LINE = 1e-13;

  private final double[] x;
  private final double[] y;
  private final double[] z;
  private final double[] length;

  private final Points cross;
  private final double[] across;
  private final double[] factor;
  private final double[] below;
  private final double[] damped;

  SightLines(int points) {
    x = new double[points];
    y = new double[points];
    z = new double[points];
    length = new double[points];
    cross = new Points(points);
    across = new double[points];
    factor = new double[points];
    below = new double[points];
    damped = new double[points];
  }

  /** Looks from an end at the points. */
  void from(double[] end, int at, Points points) {
    subtract(points.x, end[at], x);
    subtract(points.y, end[at + 1], y);
    subtract(points.z, end[at + 2], z);
    dot(x, y, z, x, y, z, length);
    root(length);
  }

  /**
   * Adds what the line of unit strength from here to another end induces.
   *
   * @param to the other end
   * @param square of the line's length [m²]
   * @param core square of the core's radius at each point [m²]
   * @param out receives it
   */
  void segment(SightLines to, double square, double[] core, Points out) {
    cross(y, z, to.y, to.z, cross.x);
    cross(z, x, to.z, to.x, cross.y);
    cross(x, y, to.x, to.y, cross.z);
    dot(cross.x, cross.y, cross.z, cross.x, cross.y, cross.z, across);
    dot(x, y, z, to.x, to.y, to.z, below);
    ends(length, to.length, below);
    widen(across, core, square, below);
    damp(across, length, to.length, damped);
    weigh(length, to.length, across, factor);
    divide(factor, below, damped);
    add(out);
  }

  /**
   * Adds what a level line from here to infinity induces.
   *
   * @param dx direction, of unit length
   * @param dy likewise
   * @param core square of the core's radius at each point [m²]
   * @param out receives it
   */
  void ray(double dx, double dy, double[] core, Points out) {
    scale(z, dy, cross.x);
    scale(z, -dx, cross.y);
    for (int i = 0; i < x.length; i++) {
      cross.z[i] = dx * y[i] - dy * x[i];
    }
    dot(cross.x, cross.y, cross.z, cross.x, cross.y, cross.z, across);
    for (int i = 0; i < x.length; i++) {
      double r = length[i];
      below[i] = r * (across[i] + core[i]);
      damped[i] = across[i] + ON_LINE * r * r;
    }
    for (int i = 0; i < x.length; i++) {
      factor[i] = QUARTER_OVER_PI * (length[i] + dx * x[i] + dy * y[i]) * across[i];
    }
    divide(factor, below, damped);
    add(out);
  }

  // Loops this short are unrolled by the compiler, without which it makes no vectors of them: all
  // in one body takes more than twice the time.

  private static void subtract(double[] a, double b, double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = a[i] - b;
    }
  }

  private static void scale(double[] a, double b, double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = a[i] * b;
    }
  }

  private static void root(double[] a) {
    for (int i = 0; i < a.length; i++) {
      a[i] = Math.sqrt(a[i]);
    }
  }

  /** One component of a cross product. */
  private static void cross(double[] a, double[] b, double[] c, double[] d, double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = a[i] * d[i] - b[i] * c[i];
    }
  }

  private static void dot(
      double[] ax, double[] ay, double[] az, double[] bx, double[] by, double[] bz, double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = ax[i] * bx[i] + ay[i] * by[i] + az[i] * bz[i];
    }
  }

  /** |a| |b| (|a| |b| + a·b), from a·b; a touch more so that it stays above 0 on the line. */
  private static void ends(double[] a, double[] b, double[] dot) {
    for (int i = 0; i < dot.length; i++) {
      double both = a[i] * b[i];
      dot[i] = both * (both * (1 + ON_LINE) + dot[i]);
    }
  }

  /** Times |a x b|² with the core. */
  private static void widen(double[] across, double[] core, double square, double[] below) {
    for (int i = 0; i < below.length; i++) {
      below[i] *= across[i] + core[i] * square;
    }
  }

  private static void damp(double[] across, double[] a, double[] b, double[] out) {
    for (int i = 0; i < out.length; i++) {
      double both = a[i] * b[i];
      out[i] = across[i] + ON_LINE * both * both;
    }
  }

  private static void weigh(double[] a, double[] b, double[] across, double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = QUARTER_OVER_PI * (a[i] + b[i]) * across[i] * across[i];
    }
  }

  private static void divide(double[] factor, double[] below, double[] damped) {
    for (int i = 0; i < factor.length; i++) {
      factor[i] /= below[i] * damped[i] + Double.MIN_NORMAL;
    }
  }

  private void add(Points out) {
    add(factor, cross.x, out.x);
    add(factor, cross.y, out.y);
    add(factor, cross.z, out.z);
  }

  private static void add(double[] a, double[] b, double[] sum) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += a[i] * b[i];
    }
  }

  /** Three coordinates of many points, or components at them. */
  static final class Points {
    final double[] x;
    final double[] y;
    final double[] z;

    Points(int count) {
      x = new double[count];
      y = new double[count];
      z = new double[count];
    }

    void clear() {
      java.util.Arrays.fill(x, 0);
      java.util.Arrays.fill(y, 0);
      java.util.Arrays.fill(z, 0);
    }

    void copy(Points of) {
      System.arraycopy(of.x, 0, x, 0, x.length);
      System.arraycopy(of.y, 0, y, 0, y.length);
      System.arraycopy(of.z, 0, z, 0, z.length);
    }
  }
}
