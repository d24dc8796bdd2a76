package trimwright.kernel.layer;

import static trimwright.kernel.layer.LayerState.CARRIED;

import trimwright.kernel.numeric.LinearSystem;

/**
 * Two wall layers and their wake, solved together with the flow outside that they displace.
 *
 * <p>Each pass follows the layers downstream with the displacement of all other stations as last
 * known and their own by the law that the outer flow gives (Veldman, AIAA Journal 19, 1981), which
 * carries them through separation. The passes are made to agree by Newton's method on the mass
 * defects: how the end of each interval moves with its beginning and with its law is known from the
 * interval's own solution, and these are chained downstream. A workspace for one thread.
 */
public final class CoupledLayers {
  /** Largest relative change of a mass defect in one step [1]. */
  private static final double MOST_CHANGE = 0.6;

  private final double unitReynolds;
  private final WallLayer first;
  private final WallLayer second;
  private final WakeLayer wake;
  private double[] given = new double[0];
  private double[] law = new double[0];
  private double[] computed = new double[0];
  private double[] residual = new double[0];
  private double[] change = new double[0];
  private double[] matrix = new double[0];
  private double[] rows = new double[0];
  private double[] firstEnd = new double[0];
  private LinearSystem system;
  private boolean warm;

  /**
   * A workspace.
   *
   * @param unitReynolds Reynolds number on the unit of length and of speed [1]
   * @param disturbance disturbances of the stream
   */
  public CoupledLayers(double unitReynolds, Disturbance disturbance) {
    this.unitReynolds = unitReynolds;
    first = new WallLayer(unitReynolds, disturbance);
    second = new WallLayer(unitReynolds, disturbance);
    wake = new WakeLayer(unitReynolds);
  }

  /** Forgets the last solution as a first guess. */
  public void cool() {
    warm = false;
  }

  /**
   * One pass and one step.
   *
   * @param geometry where the layers run
   * @param mass edge speed times displacement thickness at the stations, improved in place
   * @return largest relative change that the step asks for; infinite where a layer had no solution
   */
  public double step(LayerGeometry geometry, double[] mass) {
    int size = geometry.stations();
    if (given.length != size) {
      reserve(size);
    }
    pass(geometry, mass);
    derive(geometry);
    for (int i = 0; i < size; i++) {
      int row = i * size;
      for (int j = 0; j < size; j++) {
        matrix[row + j] = -matrix[row + j];
      }
      matrix[row + i] += 1;
      residual[i] = computed[i] - mass[i];
    }
    if (!finite()) {
      return Double.POSITIVE_INFINITY;
    }
    system.refactor(matrix);
    system.solve(residual, change);
    double most = 0;
    int n1 = geometry.first().length;
    double least = 0.1 * stagnationThickness(geometry.stretch());
    for (int i = 0; i < size; i++) {
      most = Math.max(most, Math.abs(change[i]) / Math.max(mass[i], least));
    }
    if (!Double.isFinite(most)) {
      return Double.POSITIVE_INFINITY;
    }
    double part = Math.min(1, Math.max(0.1, MOST_CHANGE / most));
    for (int i = 0; i < size; i++) {
      double limit = MOST_CHANGE * Math.max(mass[i], least);
      double moved = mass[i] + Math.max(-limit, Math.min(2 * limit, part * change[i]));
      mass[i] = Math.max(1e-6 * least, moved);
    }
    warm = true;
    return most;
  }

  private boolean finite() {
    double sum = 0;
    for (double m : matrix) {
      sum += m;
    }
    for (double r : residual) {
      sum += r;
    }
    return Double.isFinite(sum);
  }

  /**
   * Displacement thickness at a stagnation point.
   *
   * @param stretch gradient of the edge speed there
   * @return thickness, in the unit of length
   */
  public double stagnationThickness(double stretch) {
    double theta = Math.sqrt(LaminarClosure.STAGNATION_GRADIENT / (unitReynolds * stretch));
    return LaminarClosure.STAGNATION * theta;
  }

  private void reserve(int size) {
    given = new double[size];
    law = new double[size];
    computed = new double[size];
    residual = new double[size];
    change = new double[size];
    matrix = new double[size * size];
    rows = new double[CARRIED * size];
    firstEnd = new double[CARRIED * size];
    system = new LinearSystem(size);
  }

  /** Follows all layers with the displacement of all other stations as it is. */
  private void pass(LayerGeometry geometry, double[] mass) {
    int size = geometry.stations();
    double[][] response = geometry.response();
    for (int i = 0; i < size; i++) {
      double sum = geometry.onset()[i];
      double[] row = response[i];
      for (int j = 0; j < size; j++) {
        sum += row[j] * mass[j];
      }
      law[i] = row[i];
      given[i] = sum - row[i] * mass[i];
    }
    int n1 = geometry.first().length;
    int n2 = geometry.second().length;
    first.solve(
        geometry.first(),
        java.util.Arrays.copyOfRange(law, 0, n1),
        java.util.Arrays.copyOfRange(given, 0, n1),
        geometry.stretch(),
        geometry.forcedFirst(),
        warm);
    second.solve(
        geometry.second(),
        java.util.Arrays.copyOfRange(law, n1, n1 + n2),
        java.util.Arrays.copyOfRange(given, n1, n1 + n2),
        geometry.stretch(),
        geometry.forcedSecond(),
        warm);
    wake.solve(
        first.state(n1 - 1), second.state(n2 - 1), geometry.wake(), law, given, n1 + n2, warm);
    for (int i = 0; i < n1; i++) {
      computed[i] = first.massDefect(i);
    }
    for (int i = 0; i < n2; i++) {
      computed[n1 + i] = second.massDefect(i);
    }
    for (int i = 0; i < geometry.wake().length; i++) {
      computed[n1 + n2 + i] = wake.state(i + 1).massDefect();
    }
  }

  /** Derivatives of each computed mass defect by each assumed one, into the matrix. */
  private void derive(LayerGeometry geometry) {
    int size = geometry.stations();
    int n1 = geometry.first().length;
    int n2 = geometry.second().length;
    java.util.Arrays.fill(rows, 0);
    for (int i = 0; i < n1; i++) {
      chain(geometry, i, first.byFirst(i), first.byGiven(i));
      differentiate(i, first.state(i), size);
    }
    System.arraycopy(rows, 0, firstEnd, 0, rows.length);
    java.util.Arrays.fill(rows, 0);
    for (int i = 0; i < n2; i++) {
      chain(geometry, n1 + i, second.byFirst(i), second.byGiven(i));
      differentiate(n1 + i, second.state(i), size);
    }
    join(size);
    for (int i = 1; i <= geometry.wake().length; i++) {
      chain(geometry, n1 + n2 + i - 1, wake.byFirst(i), wake.byGiven(i));
      differentiate(n1 + n2 + i - 1, wake.state(i), size);
    }
  }

  /** Derivatives of the next station's unknowns from those of the station before. */
  private void chain(LayerGeometry geometry, int station, double[] byFirst, double[] byGiven) {
    int size = geometry.stations();
    double[] response = geometry.response()[station];
    for (int j = 0; j < size; j++) {
      double a = rows[j];
      double b = rows[size + j];
      double c = rows[2 * size + j];
      double d = rows[3 * size + j];
      double e = rows[4 * size + j];
      double w = j == station ? 0 : response[j];
      for (int k = 0; k < CARRIED; k++) {
        int p = k * CARRIED;
        rows[k * size + j] =
            byFirst[p] * a
                + byFirst[p + 1] * b
                + byFirst[p + 2] * c
                + byFirst[p + 3] * d
                + byFirst[p + 4] * e
                + byGiven[k] * w;
      }
    }
  }

  private void join(int size) {
    double[] one = wake.byWall(0);
    double[] two = wake.byWall(1);
    for (int j = 0; j < size; j++) {
      double[] a = new double[CARRIED];
      double[] b = new double[CARRIED];
      for (int k = 0; k < CARRIED; k++) {
        a[k] = firstEnd[k * size + j];
        b[k] = rows[k * size + j];
      }
      for (int k = 0; k < CARRIED; k++) {
        double sum = 0;
        for (int l = 0; l < CARRIED; l++) {
          sum += one[k * CARRIED + l] * a[l] + two[k * CARRIED + l] * b[l];
        }
        rows[k * size + j] = sum;
      }
    }
  }

  private void differentiate(int station, LayerState state, int size) {
    double mass = state.massDefect();
    double byShape = 1 / state.y[LayerState.SHAPE];
    int row = station * size;
    for (int j = 0; j < size; j++) {
      matrix[row + j] = mass * (rows[j] + byShape * rows[size + j] + rows[3 * size + j]);
    }
  }

  /** Stations without a solution in the last pass [1]. */
  public int failures() {
    return first.failures() + second.failures() + wake.failures();
  }

  /** The first wall's layer. */
  public WallLayer first() {
    return first;
  }

  /** The second wall's layer. */
  public WallLayer second() {
    return second;
  }

  /** Momentum thickness at a station of the wake, 0 at the trailing edge [chords]. */
  public double wakeMomentum(int i) {
    return Math.exp(wake.state(i).y[LayerState.MOMENTUM]);
  }

  /** Shape factor at a station of the wake, 0 at the trailing edge [1]. */
  public double wakeShape(int i) {
    return wake.state(i).y[LayerState.SHAPE];
  }

  /** Edge speed at a station of the wake, 0 at the trailing edge [onset speeds]. */
  public double wakeSpeed(int i) {
    return Math.exp(wake.state(i).y[LayerState.SPEED]);
  }
}
