package trimwright.kernel.section;

/** Potentials of one straight panel at a point: what doublets and sources spread on it induce. */
final class PanelPotential {
  private static final double PER_TURN = 1 / (2 * Math.PI);

  private PanelPotential() {}

  /**
   * Angle that a panel subtends at a point, positive where the point lies on its left-hand side
   * [rad]. A doublet sheet of unit strength has the potential of minus this over 2 π.
   */
  static double angle(double ax, double ay, double bx, double by, double px, double py) {
    double x1 = ax - px;
    double y1 = ay - py;
    double x2 = bx - px;
    double y2 = by - py;
    return Math.atan2(x1 * y2 - y1 * x2, x1 * x2 + y1 * y2);
  }

  /** Potential of a source sheet of unit strength on a panel. */
  static double source(double ax, double ay, double bx, double by, double px, double py) {
    double length = Math.hypot(bx - ax, by - ay);
    double tx = (bx - ax) / length;
    double ty = (by - ay) / length;
    double s = (px - ax) * tx + (py - ay) * ty;
    double n = (py - ay) * tx - (px - ax) * ty;
    double r = s - length;
    double before = s * s + n * n;
    double after = r * r + n * n;
    double sum = -2 * length;
    if (before > 0) {
      sum += s * Math.log(before);
    }
    if (after > 0) {
      sum -= r * Math.log(after);
    }
    double angle = Math.atan2(n * length, n * n + s * r);
    return 0.5 * PER_TURN * (sum + 2 * n * angle);
  }
}
