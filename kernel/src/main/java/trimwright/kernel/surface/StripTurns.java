package trimwright.kernel.surface;

import java.util.Arrays;
import java.util.List;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.numeric.Elimination;

/** One solution of a {@link StripCoupling} whose strips leave their straight lines. */
final class StripTurns {
  private final StripCoupling coupling;
  private final LoadShifts shifts;
  private final List<SurfaceFlow> straight;
  private final double[] straightLift;
  private final Attitude at;
  private final int n;
  private final int wings;

  /** Sine of each strip's line of no lift to the undisturbed stream. */
  private final double[] crossing;

  /** Turns that do not depend on the sections' departures. */
  private final double[] known;

  /** Onset at each wing without departures, and its change with each departure (rows). */
  private final double[] onset;

  private final double[][] onsetPer;

  /** Lift without departures, and its change with each departure in turn. */
  private final double[] lift;

  private final double[] liftPer;

  StripTurns(
      StripCoupling coupling,
      LoadShifts shifts,
      List<SurfaceFlow> straight,
      double[] straightLift,
      double pitch) {
    this.coupling = coupling;
    this.shifts = shifts;
    this.straight = straight;
    this.straightLift = straightLift;
    at = Attitude.of(pitch);
    n = coupling.strips();
    wings = straight.size();
    crossing = new double[n];
    for (int w = 0; w < wings; w++) {
      Strips s = coupling.wings().get(w).strips;
      for (int k = 0; k < s.count; k++) {
        crossing[coupling.first(w) + k] =
            Math.sin(pitch + s.incidence[k] - coupling.zeroLiftAngle()[coupling.first(w) + k]);
      }
    }
    known = known();
    onset = new double[wings];
    onsetPer = new double[wings][n];
    liftPer = shifts.lift().clone();
    if (!coupling.evenStream()) {
      for (int j = 0; j < n; j++) {
        for (int k = 0; k < n; k++) {
          liftPer[j * n + k] *= coupling.stream(j);
        }
      }
    }
    if (coupling.perLift() != null) {
      follow();
    }
    double[] turns = known.clone();
    addOnset(onset, turns);
    lift = Columns.times(shifts.lift(), turns);
    for (int k = 0; k < n; k++) {
      lift[k] += straightLift[k];
    }
  }

  /** A slower stream is one that meets the strip under a smaller angle. */
  private double[] known() {
    double[] turns = new double[n];
    for (int k = 0; k < n; k++) {
      turns[k] = (coupling.stream(k) - 1) * crossing[k];
    }
    return turns;
  }

  /**
   * The onset that the wings' lift makes changes that lift in turn: solved for the onset, so that
   * what is left depends on the departures alone.
   */
  private void follow() {
    double[][] perLift = coupling.perLift();
    double[] up = new double[wings];
    double[][] upPerOnset = new double[wings][wings];
    for (int j = 0; j < wings; j++) {
      up[j] = straight.get(j).force().up() + row(shifts.up(), j, known);
      for (int i = 0; i < wings; i++) {
        upPerOnset[j][i] = sum(shifts.up(), j, i);
      }
    }
    double[][] system = new double[wings][wings];
    for (int i = 0; i < wings; i++) {
      onset[i] = coupling.added()[i];
      for (int j = 0; j < wings; j++) {
        onset[i] += perLift[i][j] * up[j];
        for (int k = 0; k < n; k++) {
          onsetPer[i][k] += perLift[i][j] * shifts.up()[j * n + k] * coupling.stream(k);
        }
        for (int m = 0; m < wings; m++) {
          system[i][m] -= perLift[i][j] * upPerOnset[j][m];
        }
      }
      system[i][i] += 1;
    }
    double[] bare = onset.clone();
    double[][] barePer = Arrays.stream(onsetPer).map(double[]::clone).toArray(double[][]::new);
    Arrays.fill(onset, 0);
    for (int i = 0; i < wings; i++) {
      Arrays.fill(onsetPer[i], 0);
    }
    for (int j = 0; j < wings; j++) {
      double[] answer = new double[wings];
      answer[j] = 1;
      solveFor(system, answer);
      for (int i = 0; i < wings; i++) {
        onset[i] += answer[i] * bare[j];
        Columns.add(answer[i], barePer[j], 0, onsetPer[i], 0, n);
      }
    }
    for (int i = 0; i < wings; i++) {
      double[] whole = new double[n];
      Arrays.fill(whole, coupling.first(i), coupling.first(i + 1), 1);
      double[] per = Columns.times(shifts.lift(), whole);
      for (int j = 0; j < n; j++) {
        Columns.add(onsetPer[i][j], per, 0, liftPer, j * n, n);
      }
    }
  }

  private static void solveFor(double[][] system, double[] right) {
    double[][] copy = Arrays.stream(system).map(double[]::clone).toArray(double[][]::new);
    if (!Elimination.solve(copy, right, right.length)) {
      throw new ArithmeticException("the onset that lift makes grows with it without bound");
    }
  }

  private void subtractProduct(double[] a, double[] b, int from, double[] to) {
    for (int k = 0; k < n; k++) {
      to[from + k] -= a[from + k] * b[k];
    }
  }

  /** Sum of a matrix' row over one wing's strips. */
  private double sum(double[] matrix, int row, int wing) {
    double sum = 0;
    for (int k = coupling.first(wing); k < coupling.first(wing + 1); k++) {
      sum += matrix[row * n + k];
    }
    return sum;
  }

  static double row(double[] matrix, int row, double[] x) {
    double sum = 0;
    int n = x.length;
    int from = row * n;
    for (int k = 0; k < n; k++) {
      sum += matrix[from + k] * x[k];
    }
    return sum;
  }

  private void addOnset(double[] angles, double[] turns) {
    for (int w = 0; w < wings; w++) {
      for (int k = coupling.first(w); k < coupling.first(w + 1); k++) {
        turns[k] += angles[w];
      }
    }
  }

  /** Begins at given departures, or at the straight lines. */
  CoupledFlow solve(double[] start) {
    double[] base = new double[n];
    double[] turned = new double[n * n];
    double[] perLift = new double[n];
    for (int k = 0; k < n; k++) {
      perLift[k] = 1 / (coupling.liftSlope()[k] * coupling.stream(k));
      base[k] = lift[k] * perLift[k] + coupling.zeroLiftAngle()[k];
      turned[k * n + k] = 1;
    }
    for (int j = 0; j < n; j++) {
      subtractProduct(liftPer, perLift, j * n, turned);
    }
    StripIteration iteration = new StripIteration(coupling, base, turned);
    if (start != null) {
      System.arraycopy(start, 0, iteration.departure, 0, n);
    }
    iteration.run();
    return new CoupledFlow(
        loads(iteration.departure, iteration.angle),
        iteration.departure,
        iteration.residual,
        iteration.steps);
  }

  private List<WingLoad> loads(double[] departure, double[] angle) {
    double[] turns = known.clone();
    double[] onsets = new double[wings];
    for (int w = 0; w < wings; w++) {
      onsets[w] = onset[w] + dot(onsetPer[w], departure);
    }
    addOnset(onsets, turns);
    double[] all = Columns.times(liftPer, departure);
    for (int k = 0; k < n; k++) {
      turns[k] += coupling.stream(k) * departure[k];
      all[k] += lift[k];
    }
    return new TurnedLoads(coupling, shifts, straight, straightLift, crossing, at)
        .of(turns, onsets, all, angle);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }
}
