package trimwright.kernel.layer;

import static trimwright.kernel.layer.LayerState.COUNT;

/**
 * The boundary-layer equations between two stations, and their solution at the second together with
 * a law that ties edge speed and mass defect there: u - d u δ* = w.
 *
 * <p>With d = 0 the edge speed is given (direct). With d from the outer flow the layer can go
 * through separation, where the direct equations have no solution (Veldman, AIAA Journal 19, 1981:
 * quasi-simultaneous coupling).
 *
 * <p>Laminar: momentum and kinetic energy. Turbulent: momentum, entrainment and lag. Where
 * transition falls inside the interval both sets are added with the lengths' shares as weights. The
 * differences are logarithmic, so that powers of the length come out exactly; laminar means are
 * central, turbulent ones lean to the second station.
 */
final class LayerInterval {
  /** Weight of the second station in turbulent means. */
  private static final double LATER = 0.6;

  private static final int MOST_STEPS = 40;
  private static final double DONE = 1e-10;

  private final double unitReynolds;
  private final double logUnitReynolds;
  private final double[] residual = new double[COUNT];
  private final double[] byShare = new double[COUNT];
  private final double[][] first = new double[COUNT][COUNT];
  private final double[][] second = new double[COUNT][COUNT];
  private final SmallSystem system = new SmallSystem();
  private final double[] step = new double[COUNT];

  /** Closures at the first station; set before use, both kinds where shares are mixed. */
  final ClosureValues one = new ClosureValues();

  /** Closures at the second station; left for the next interval. */
  final ClosureValues two = new ClosureValues();

  private LayerState from;
  private LayerState to;
  private double length;
  private double share;
  private double halves;
  private double law;
  private double given;

  LayerInterval(double unitReynolds) {
    this.unitReynolds = unitReynolds;
    logUnitReynolds = Math.log(unitReynolds);
  }

  /**
   * Solves for the second station.
   *
   * @param start first station, whose entrainment coefficient is that at which turbulence starts
   *     where the interval holds transition
   * @param end first guess, replaced by the solution
   * @param distance between the stations [chords]
   * @param laminarShare 1 laminar, 0 turbulent, between them transition
   * @param wake whether the layer is a wake, counted with both halves
   * @param d coefficient of the law
   * @param w right-hand side of the law
   * @return whether the equations are met
   */
  boolean solve(
      LayerState start,
      LayerState end,
      double distance,
      double laminarShare,
      boolean wake,
      double d,
      double w) {
    from = start;
    to = end;
    length = distance;
    share = laminarShare;
    halves = wake ? 2 : 1;
    law = d;
    given = w;
    boolean met = false;
    for (int i = 0; i < MOST_STEPS && !met; i++) {
      closures(wake);
      equations();
      if (!system.factor(second)) {
        return false;
      }
      system.solve(residual, step);
      double scale = scale();
      double change = 0;
      for (int k = 0; k < COUNT; k++) {
        to.y[k] -= scale * step[k];
        change = Math.max(change, Math.abs(step[k]));
      }
      if (!Double.isFinite(change)) {
        return false;
      }
      met = change < DONE;
      if (share == 1) {
        to.y[LayerState.SHAPE] = Math.max(1.9, to.y[LayerState.SHAPE]);
      } else {
        to.y[LayerState.SHAPE] = Math.max(1.02, to.y[LayerState.SHAPE]);
      }
    }
    return met;
  }

  private double scale() {
    double h = to.y[LayerState.SHAPE];
    double most = Math.max(Math.abs(step[0]) / 0.6, Math.abs(step[3]) / 0.25);
    most = Math.max(most, Math.abs(step[1]) / (0.4 * (h - 0.9)));
    most = Math.max(most, Math.abs(step[2]) / (0.01 + 0.5 * Math.abs(to.y[2])));
    return most > 1 ? 1 / most : 1;
  }

  private void closures(boolean wake) {
    double h = to.y[LayerState.SHAPE];
    if (share > 0) {
      LaminarClosure.evaluate(h, two);
    }
    if (share < 1) {
      TurbulentClosure.evaluate(
          h, to.logReynolds(logUnitReynolds), to.y[LayerState.ENTRAINMENT], wake, two);
    }
  }

  private void equations() {
    for (int k = 0; k < COUNT; k++) {
      residual[k] = 0;
      byShare[k] = 0;
      java.util.Arrays.fill(first[k], 0);
      java.util.Arrays.fill(second[k], 0);
    }
    double a1 = from.y[0];
    double a2 = to.y[0];
    double h1 = from.y[1];
    double h2 = to.y[1];
    double dq = to.y[3] - from.y[3];
    // Momentum.
    double mean = 0.5 * (h1 + h2) + 2;
    residual[0] = a2 - a1 + mean * dq;
    add(0, -1, 0.5 * dq, -mean, 1, 0.5 * dq, mean);
    // Entrainment changes in turbulence only.
    residual[2] = to.y[2] - from.y[2];
    first[2][2] = -1;
    second[2][2] = 1;
    if (share > 0) {
      laminar(dq, h1, h2);
    }
    if (share < 1) {
      turbulent(a2 - a1, dq);
    }
    double speed = Math.exp(to.y[3]);
    double thickness = Math.exp(a2);
    residual[3] = speed * (1 - law * h2 * thickness) - given;
    second[3][0] = -speed * law * h2 * thickness;
    second[3][1] = -speed * law * thickness;
    second[3][3] = residual[3] + given;
  }

  private void add(int row, double a1, double h1, double q1, double a2, double h2, double q2) {
    first[row][0] += a1;
    first[row][1] += h1;
    first[row][3] += q1;
    second[row][0] += a2;
    second[row][1] += h2;
    second[row][3] += q2;
  }

  private void laminar(double dq, double h1, double h2) {
    double u1 = Math.exp(from.y[3]);
    double u2 = Math.exp(to.y[3]);
    // Means over the interval of 1/(u θ²) for a speed that grows in proportion to the length, as it
    // does from a stagnation point on: exact there however close to it the first station lies.
    double ahead = 0.5 - dq / 12;
    double behind = 0.5 + dq / 12;
    double mean1 = Math.sqrt(u1 * u2) * (1 + dq * dq / 24);
    if (Math.abs(dq) > 0.02) {
      mean1 = (u2 - u1) / dq;
      ahead = 1 / dq - u1 / (u2 - u1);
      behind = u2 / (u2 - u1) - 1 / dq;
    }
    double per = length / (unitReynolds * mean1);
    double w1 = 0.5 * per * Math.exp(-2 * from.y[0]);
    double w2 = 0.5 * per * Math.exp(-2 * to.y[0]);
    double p1 = -ahead;
    double p2 = -behind;
    double friction = w1 * one.laminarShear + w2 * two.laminarShear;
    residual[0] -= share * friction;
    byShare[0] -= friction;
    add(
        0,
        share * 2 * w1 * one.laminarShear,
        -share * w1 * one.laminarShearByShape,
        -share * friction * p1,
        share * 2 * w2 * two.laminarShear,
        -share * w2 * two.laminarShearByShape,
        -share * friction * p2);
    double source = w1 * one.energySource + w2 * two.energySource;
    double mean = 0.5 * (h1 + h2) - 1;
    double energy = two.logEnergy - one.logEnergy - source - mean * dq;
    residual[1] += share * energy;
    byShare[1] += energy;
    add(
        1,
        share * 2 * w1 * one.energySource,
        share * (-one.logEnergyByShape - w1 * one.energySourceByShape - 0.5 * dq),
        share * (mean - source * p1),
        share * 2 * w2 * two.energySource,
        share * (two.logEnergyByShape - w2 * two.energySourceByShape - 0.5 * dq),
        share * (-mean - source * p2));
  }

  private void turbulent(double da, double dq) {
    double part = 1 - share;
    double w1 = (1 - LATER) * length * Math.exp(-from.y[0]);
    double w2 = LATER * length * Math.exp(-to.y[0]);
    double[] v1 = one.turbulent;
    double[] v2 = two.turbulent;
    double friction = w1 * v1[ClosureValues.FRICTION] + w2 * v2[ClosureValues.FRICTION];
    residual[0] -= part * friction;
    byShare[0] += friction;
    spread(0, ClosureValues.FRICTION, -part * w1, -part * w2);
    first[0][0] += part * w1 * v1[ClosureValues.FRICTION];
    second[0][0] += part * w2 * v2[ClosureValues.FRICTION];

    double grown =
        halves * (w1 * v1[ClosureValues.ENTRAINMENT] + w2 * v2[ClosureValues.ENTRAINMENT]);
    double entrained = v2[ClosureValues.LOG_SHAPE] - v1[ClosureValues.LOG_SHAPE] + da + dq - grown;
    residual[1] += part * entrained;
    byShare[1] -= entrained;
    spread(1, ClosureValues.LOG_SHAPE, -part, part);
    spread(1, ClosureValues.ENTRAINMENT, -part * halves * w1, -part * halves * w2);
    first[1][0] += part * (-1 + halves * w1 * v1[ClosureValues.ENTRAINMENT]);
    second[1][0] += part * (1 + halves * w2 * v2[ClosureValues.ENTRAINMENT]);
    first[1][3] -= part;
    second[1][3] += part;

    double rate = (1 - LATER) * v1[ClosureValues.RATE] + LATER * v2[ClosureValues.RATE];
    double drive = halves * (w1 * v1[ClosureValues.DRIVE] + w2 * v2[ClosureValues.DRIVE]);
    residual[2] += part * (rate * dq - drive);
    byShare[2] -= rate * dq - drive;
    spread(2, ClosureValues.RATE, part * (1 - LATER) * dq, part * LATER * dq);
    spread(2, ClosureValues.DRIVE, -part * halves * w1, -part * halves * w2);
    first[2][0] += part * halves * w1 * v1[ClosureValues.DRIVE];
    second[2][0] += part * halves * w2 * v2[ClosureValues.DRIVE];
    first[2][3] -= part * rate;
    second[2][3] += part * rate;
  }

  /** Adds a closure quantity's derivatives to a row, with a weight at each station. */
  private void spread(int row, int quantity, double w1, double w2) {
    double h1 = w1 * one.slope[0][quantity];
    double l1 = w1 * one.slope[1][quantity];
    double h2 = w2 * two.slope[0][quantity];
    double l2 = w2 * two.slope[1][quantity];
    add(row, l1, h1, l1, l2, h2, l2);
    first[row][2] += w1 * one.slope[2][quantity];
    second[row][2] += w2 * two.slope[2][quantity];
  }

  /**
   * How the solved second station moves, its progress towards transition left out; to be asked
   * after {@link #solve}.
   *
   * @param byFirst receives its derivatives by the values carried from the first station, row after
   *     row
   * @param byGiven receives its derivatives by the law's right-hand side
   * @param bySharing receives its derivatives by the laminar share; null if not wanted
   */
  void sensitivities(double[] byFirst, double[] byGiven, double[] bySharing) {
    java.util.Arrays.fill(byFirst, 0);
    for (int j = 0; j < COUNT; j++) {
      for (int i = 0; i < COUNT; i++) {
        residual[i] = -first[i][j];
      }
      system.solve(residual, step);
      for (int i = 0; i < COUNT; i++) {
        byFirst[i * LayerState.CARRIED + j] = step[i];
      }
    }
    java.util.Arrays.fill(residual, 0);
    residual[3] = 1;
    system.solve(residual, byGiven);
    byGiven[LayerState.PROGRESS] = 0;
    if (bySharing != null) {
      for (int i = 0; i < COUNT; i++) {
        residual[i] = -byShare[i];
      }
      system.solve(residual, bySharing);
    }
  }

  /** The sensitivities of a station that took over the one before for want of a solution. */
  static void takeOver(double speed, double[] byFirst, double[] byGiven) {
    java.util.Arrays.fill(byFirst, 0);
    java.util.Arrays.fill(byGiven, 0);
    for (int k = 0; k < LayerState.SPEED; k++) {
      byFirst[k * LayerState.CARRIED + k] = 1;
    }
    byGiven[LayerState.SPEED] = 1 / speed;
  }
}
