package trimwright.kernel.layer;

import static trimwright.kernel.layer.LayerState.CARRIED;

/** The wake behind two wall layers, counted with both its halves. A workspace for one thread. */
final class WakeLayer {
  private final LayerInterval interval;
  private final double logUnitReynolds;

  /** State at the trailing edge and at each station behind it. */
  private LayerState[] state = new LayerState[0];

  private double[][] byFirst = new double[0][];
  private double[][] byGiven = new double[0][];
  private final double[][] joining = new double[2][CARRIED * CARRIED];
  private int failures;

  WakeLayer(double unitReynolds) {
    interval = new LayerInterval(unitReynolds);
    logUnitReynolds = Math.log(unitReynolds);
  }

  void solve(
      LayerState one,
      LayerState two,
      double[] stations,
      double[] law,
      double[] given,
      int offset,
      boolean warm) {
    int count = stations.length;
    if (state.length != count + 1) {
      state = new LayerState[count + 1];
      for (int i = 0; i <= count; i++) {
        state[i] = new LayerState();
      }
      byFirst = new double[count + 1][CARRIED * CARRIED];
      byGiven = new double[count + 1][CARRIED];
    }
    failures = 0;
    join(one, two);
    LayerState start = state[0];
    TurbulentClosure.evaluate(
        start.y[1], start.logReynolds(logUnitReynolds), start.y[2], true, interval.one);
    double station = 0;
    for (int i = 1; i <= count; i++) {
      LayerState from = state[i - 1];
      LayerState to = state[i];
      double length = stations[i - 1] - station;
      double d = law[offset + i - 1];
      double w = given[offset + i - 1];
      if (!warm) {
        to.copyFrom(from);
      }
      boolean met = interval.solve(from, to, length, 0, true, d, w);
      if (!met) {
        to.copyFrom(from);
        met = interval.solve(from, to, length, 0, true, d, w);
      }
      if (met) {
        interval.sensitivities(byFirst[i], byGiven[i], null);
      } else {
        failures++;
        to.copyFrom(from);
        LayerInterval.takeOver(Math.exp(to.y[LayerState.SPEED]), byFirst[i], byGiven[i]);
        TurbulentClosure.evaluate(
            to.y[LayerState.SHAPE],
            to.logReynolds(logUnitReynolds),
            to.y[LayerState.ENTRAINMENT],
            true,
            interval.two);
      }
      interval.one.copyFrom(interval.two);
      station = stations[i - 1];
    }
  }

  /** Both layers side by side: thicknesses add, entrainment adds, the speed is the mean. */
  private void join(LayerState one, LayerState two) {
    double t1 = Math.exp(one.y[0]);
    double t2 = Math.exp(two.y[0]);
    double sum = t1 + t2;
    double h = (t1 * one.y[1] + t2 * two.y[1]) / sum;
    double c = (t1 * one.y[2] + t2 * two.y[2]) / sum;
    double[] y = state[0].y;
    y[0] = Math.log(sum);
    y[1] = h;
    y[2] = c;
    y[3] = 0.5 * (one.y[3] + two.y[3]);
    part(joining[0], t1 / sum, one.y[1] - h, one.y[2] - c);
    part(joining[1], t2 / sum, two.y[1] - h, two.y[2] - c);
  }

  private static void part(double[] by, double share, double shape, double entrainment) {
    java.util.Arrays.fill(by, 0);
    by[0] = share;
    by[CARRIED] = share * shape;
    by[CARRIED + 1] = share;
    by[2 * CARRIED] = share * entrainment;
    by[2 * CARRIED + 2] = share;
    by[3 * CARRIED + 3] = 0.5;
  }

  int failures() {
    return failures;
  }

  /** State at the trailing edge (0) and at the stations behind it. */
  LayerState state(int i) {
    return state[i];
  }

  double[] byWall(int wall) {
    return joining[wall];
  }

  double[] byFirst(int i) {
    return byFirst[i];
  }

  double[] byGiven(int i) {
    return byGiven[i];
  }
}
