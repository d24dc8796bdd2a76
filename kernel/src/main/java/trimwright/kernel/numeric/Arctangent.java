package trimwright.kernel.numeric;

/**
 * The angle of a direction, to within four units in the last place of the library's own and several
 * times quicker: wakes ask for it ten thousand times per table.
 *
 * <p>The slope up to 1 is turned back by the nearest of seventeen fixed angles (sum formula of the
 * tangent), and the small rest goes through the series of Gregory and Leibniz, elementary.
 */
public final class Arctangent {
  private static final int NODES = 16;
  private static final double[] ANGLE = new double[NODES + 1];

  static {
    for (int i = 0; i <= NODES; i++) {
      ANGLE[i] = Math.atan((double) i / NODES);
    }
  }

  private Arctangent() {}

  /**
   * The angle from the x axis to a direction.
   *
   * @param y component across, finite
   * @param x component along, finite
   * @return angle within -pi to pi [rad]; 0 for no direction at all
   */
  public static double of(double y, double x) {
    double high = Math.abs(y);
    double wide = Math.abs(x);
    boolean steep = high > wide;
    double large = steep ? high : wide;
    double small = steep ? wide : high;
    if (large == 0) {
      return 0;
    }
    int node = (int) (small / large * NODES + 0.5);
    double slope = (double) node / NODES;
    // At most 1/32: the first term left out is 8e-17 of the whole.
    double rest = (small - slope * large) / (large + slope * small);
    double square = rest * rest;
    double series = 1 - square * (1 / 3.0 - square * (1 / 5.0 - square * (1 / 7.0 - square / 9.0)));
    double angle = ANGLE[node] + rest * series;
    if (steep) {
      angle = 0.5 * Math.PI - angle;
    }
    if (x < 0) {
      angle = Math.PI - angle;
    }
    return y < 0 ? -angle : angle;
  }
}
