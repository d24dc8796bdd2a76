package trimwright.kernel.surface;

import trimwright.kernel.numeric.Elimination;

/**
 * Finds the departures d of the strips' sections from their straight lines [rad]: d = e(a) + S f(a)
 * with the effective angles a = b - P d, e a section's departure up to its stall (beyond, that of
 * lift kept at the largest), f what its lift falls below the largest past it, over the slope, and S
 * the evening out of {@link SpanSmoothing}. One object per solution.
 *
 * <p>Begins at given departures or at the straight lines (d = 0, the attached branch), so that the
 * answer is one and the same for the same question; hysteresis is not computed. Steps without a
 * matrix as long as they shrink the residual fivefold; else Newton's. A step that does not shrink
 * the residual is taken back and made shorter, as an implicit step in time, until one does or has
 * become one that need not.
 */
final class StripIteration {
  private static final int MOST_STEPS = 80;

  /** Where the iteration stops [1], far below what counts as converged. */
  private static final double GOAL = 1e-9;

  /** A step without a matrix must shrink the residual by this to be followed by another [1]. */
  private static final double QUICK = 0.2;

  /** Shares of a step in time: the first, and that from which steps are taken as they come. */
  private static final double FIRST_SHIFT = 0.5;

  private static final double PATIENT_SHIFT = 30;

  private final int n;
  private final StripCoupling coupling;
  private final double[] base;
  private final double[] turned;

  /** Matrix P by its rows; made when a step of Newton's needs it. */
  private double[] rows;

  /** Departures, effective angles, and what the sections ask for beyond the departures. */
  final double[] departure;

  final double[] angle;
  private final double[] miss;

  int steps;
  double residual;

  /**
   * An iteration.
   *
   * @param base effective angles without departures [rad]
   * @param turned matrix P, column after column
   */
  StripIteration(StripCoupling coupling, double[] base, double[] turned) {
    n = base.length;
    this.coupling = coupling;
    this.base = base;
    this.turned = turned;
    departure = new double[n];
    angle = new double[n];
    miss = new double[n];
  }

  void run() {
    residual = evaluate(departure, angle, miss);
    double[] trial = new double[n];
    double[] trialAngle = new double[n];
    double[] trialMiss = new double[n];
    boolean quick = true;
    double shift = 0;
    while (residual > GOAL && steps < MOST_STEPS) {
      steps++;
      double[] step = quick ? miss : newton(shift);
      for (int k = 0; k < n; k++) {
        trial[k] = departure[k] + step[k];
      }
      double next = evaluate(trial, trialAngle, trialMiss);
      if (next < residual || !quick && shift > PATIENT_SHIFT) {
        quick = quick && next < QUICK * residual;
        shift = shift < FIRST_SHIFT ? 0 : 0.25 * shift;
        residual = next;
        System.arraycopy(trial, 0, departure, 0, n);
        System.arraycopy(trialAngle, 0, angle, 0, n);
        System.arraycopy(trialMiss, 0, miss, 0, n);
      } else if (quick) {
        quick = false;
      } else {
        shift = Math.max(FIRST_SHIFT, 4 * shift);
      }
    }
  }

  private double evaluate(double[] d, double[] a, double[] out) {
    double[] turn = Columns.times(turned, d);
    for (int k = 0; k < n; k++) {
      a[k] = base[k] - turn[k];
      out[k] = -d[k];
    }
    int k = 0;
    for (StripPolars wing : coupling.wings()) {
      int count = wing.count();
      for (int i = 0; i < count; i++) {
        double slope = wing.liftSlope[i];
        double straight = slope * (a[k + i] - wing.zeroLiftAngle[i]);
        double lift = wing.polar[i].lift(a[k + i]);
        double kept = wing.kept(i, a[k + i], lift);
        out[k + i] += (kept - straight) / slope;
        if (kept != lift) {
          Columns.add((lift - kept) / slope, wing.smoothing, i * count, out, k, count);
        }
      }
      k += count;
    }
    double most = 0;
    for (int i = 0; i < n; i++) {
      most = Math.max(most, Math.abs(out[i]) * coupling.liftSlope()[i]);
    }
    return most;
  }

  /** Solves ((1 + shift) + (E + S F) P) s = miss, E and F the slopes of e and f. */
  private double[] newton(double shift) {
    if (rows == null) {
      rows = Columns.transposed(turned, n);
    }
    double[][] matrix = new double[n][n];
    int k = 0;
    for (StripPolars wing : coupling.wings()) {
      int count = wing.count();
      for (int i = 0; i < count; i++) {
        double slope = wing.polar[i].slope(angle[k + i]) / wing.liftSlope[i];
        boolean stalled = wing.stalled(i, angle[k + i]);
        double bend = stalled ? -1 : slope - 1;
        if (bend != 0) {
          Columns.add(bend, rows, (k + i) * n, matrix[k + i], 0, n);
        }
        for (int j = 0; stalled && j < count; j++) {
          double part = slope * wing.smoothing[i * count + j];
          Columns.add(part, rows, (k + i) * n, matrix[k + j], 0, n);
        }
        matrix[k + i][k + i] += 1 + shift;
      }
      k += count;
    }
    double[] step = miss.clone();
    if (!Elimination.solve(matrix, step, n)) {
      // Between two branches; a step in time leads off it.
      return newton(Math.max(FIRST_SHIFT, 4 * shift));
    }
    return step;
  }
}
