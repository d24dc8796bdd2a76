package trimwright.kernel.surface;

/**
 * Velocity about straight vortex lines of unit strength (Biot and Savart; J. Katz, A. Plotkin,
 * Low-Speed Aerodynamics, 2nd ed. 2001, section 10.4.5, from memory), each with a core in which the
 * velocity falls to nothing at the line.
 */
final class VortexLine {
  private static final double QUARTER_OVER_PI = 0.25 / Math.PI;

  /** Square of the sine of an angle to a line below which a point counts as on it. */
  private static final double ON_LINE = 1e-13;

  private VortexLine() {}

  /**
   * Adds what a line from one point to another induces.
   *
   * @param a offset of three coordinates in {@code from} [m]
   * @param core square of the core's radius [m²]
   * @param sign 1 or -1
   * @param out three components [1/m]
   */
  static void segment(
      double[] from,
      int a,
      double[] to,
      int b,
      double x,
      double y,
      double z,
      double core,
      double sign,
      double[] out) {
    double ax = x - from[a];
    double ay = y - from[a + 1];
    double az = z - from[a + 2];
    double bx = x - to[b];
    double by = y - to[b + 1];
    double bz = z - to[b + 2];
    double cx = ay * bz - az * by;
    double cy = az * bx - ax * bz;
    double cz = ax * by - ay * bx;
    double lx = ax - bx;
    double ly = ay - by;
    double lz = az - bz;
    double across = cx * cx + cy * cy + cz * cz;
    double la = Math.sqrt(ax * ax + ay * ay + az * az);
    double lb = Math.sqrt(bx * bx + by * by + bz * bz);
    // On the line itself rounding would be magnified by the small core
    if (across <= ON_LINE * la * la * lb * lb) {
      return;
    }
    // (l, a/|a| - b/|b|) / |a x b|², in a form that does not cancel beside the line's ends
    double both = la * lb;
    double along = (la + lb) / (both * (both + ax * bx + ay * by + az * bz));
    double f =
        sign * QUARTER_OVER_PI * along * across / (across + core * (lx * lx + ly * ly + lz * lz));
    out[0] += f * cx;
    out[1] += f * cy;
    out[2] += f * cz;
  }

  /**
   * Adds what a line from a point to infinity induces.
   *
   * @param a offset of three coordinates in {@code from} [m]
   * @param dx direction, of unit length
   */
  static void ray(
      double[] from,
      int a,
      double dx,
      double dy,
      double dz,
      double x,
      double y,
      double z,
      double core,
      double sign,
      double[] out) {
    double rx = x - from[a];
    double ry = y - from[a + 1];
    double rz = z - from[a + 2];
    double cx = dy * rz - dz * ry;
    double cy = dz * rx - dx * rz;
    double cz = dx * ry - dy * rx;
    double r = Math.sqrt(rx * rx + ry * ry + rz * rz);
    double across = cx * cx + cy * cy + cz * cz;
    if (across <= ON_LINE * r * r) {
      return;
    }
    double near = across + core;
    double f = sign * QUARTER_OVER_PI * (1 + (dx * rx + dy * ry + dz * rz) / r) / near;
    out[0] += f * cx;
    out[1] += f * cy;
    out[2] += f * cz;
  }
}
