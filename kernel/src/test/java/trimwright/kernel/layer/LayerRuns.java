package trimwright.kernel.layer;

import java.util.function.DoubleUnaryOperator;

/** Layers under given edge speeds, for tests. */
final class LayerRuns {
  static final double NEVER = Double.POSITIVE_INFINITY;

  private LayerRuns() {}

  /** Stations in geometric steps. */
  static double[] stations(double from, double to, int count) {
    double[] s = new double[count];
    for (int i = 0; i < count; i++) {
      s[i] = from * Math.pow(to / from, i / (count - 1.0));
    }
    return s;
  }

  /** A layer that starts as at a stagnation point of the stretch given. */
  static WallLayer direct(
      double[] stations,
      double reynolds,
      DoubleUnaryOperator speed,
      double stretch,
      double forced) {
    double[] given = new double[stations.length];
    for (int i = 0; i < given.length; i++) {
      given[i] = speed.applyAsDouble(stations[i]);
    }
    WallLayer layer = new WallLayer(reynolds, Disturbance.TUNNEL);
    layer.solve(stations, new double[given.length], given, stretch, forced, false);
    return layer;
  }
}
