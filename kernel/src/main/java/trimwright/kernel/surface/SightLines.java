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

  SightLines(int points) {
    x = new double[points];
    y = new double[points];
    z = new double[points];
    length = new double[points];
  }

  /** Looks from an end at the points. */
  void from(double[] end, int at, Points points) {
    double ex = end[at];
    double ey = end[at + 1];
    double ez = end[at + 2];
    for (int i = 0; i < x.length; i++) {
      double dx = points.x[i] - ex;
      double dy = points.y[i] - ey;
      double dz = points.z[i] - ez;
      x[i] = dx;
      y[i] = dy;
      z[i] = dz;
      length[i] = Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
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
    for (int i = 0; i < x.length; i++) {
      double cx = y[i] * to.z[i] - z[i] * to.y[i];
      double cy = z[i] * to.x[i] - x[i] * to.z[i];
      double cz = x[i] * to.y[i] - y[i] * to.x[i];
      double across = cx * cx + cy * cy + cz * cz;
      double both = length[i] * to.length[i];
      double dot = x[i] * to.x[i] + y[i] * to.y[i] + z[i] * to.z[i];
      double below =
          both
              * (both * (1 + ON_LINE) + dot)
              * (across + core[i] * square)
              * (across + ON_LINE * both * both);
      double f =
          QUARTER_OVER_PI
              * (length[i] + to.length[i])
              * across
              * across
              / (below + Double.MIN_NORMAL);
      out.x[i] += f * cx;
      out.y[i] += f * cy;
      out.z[i] += f * cz;
    }
  }

  /**
   * Adds what a level line from here to infinity induces.
   *
   * @param dx direction, of unit length
   * @param dy likewise
   */
  void ray(double dx, double dy, double[] core, Points out) {
    for (int i = 0; i < x.length; i++) {
      double cx = dy * z[i];
      double cy = -dx * z[i];
      double cz = dx * y[i] - dy * x[i];
      double across = cx * cx + cy * cy + cz * cz;
      double r = length[i];
      double below = r * (across + core[i]) * (across + ON_LINE * r * r);
      double f =
          QUARTER_OVER_PI * (r + dx * x[i] + dy * y[i]) * across / (below + Double.MIN_NORMAL);
      out.x[i] += f * cx;
      out.y[i] += f * cy;
      out.z[i] += f * cz;
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
