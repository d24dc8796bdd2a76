package trimwright.kernel.layer;

import static trimwright.kernel.layer.LayerState.CARRIED;
import static trimwright.kernel.layer.LayerState.COUNT;

/**
 * The boundary layer along one surface, from near its stagnation point downstream: laminar, through
 * transition, turbulent, with separation where it comes. Its states start each new solution, so
 * that a small change of the outer flow costs little. A workspace for one thread.
 */
public final class WallLayer {
  /** Most that the logarithm of the momentum thickness grows where a layer is full [1]. */
  private static final double MOST_GROWN = 0.6;

  private static final double FULL = 1.3;

  /** Least shape factor of a turbulent layer [1]. */
  private static final double FULLEST = 1.1;

  private final double unitReynolds;
  private final double logUnitReynolds;
  private final TransitionPlace place;
  private final LayerInterval interval;
  private final LayerState guess = new LayerState();
  private final double[] bySharing = new double[COUNT];

  private LayerState[] state = new LayerState[0];
  private double[][] byFirst = new double[0][];
  private double[][] byGiven = new double[0][];
  private int count;
  private int failures;
  private double transition;
  private double turbulentSeparation;
  private double laminarSeparation;

  /**
   * A workspace.
   *
   * @param unitReynolds Reynolds number on the unit of length and of speed [1]
   * @param disturbance disturbances of the stream
   */
  public WallLayer(double unitReynolds, Disturbance disturbance) {
    this.unitReynolds = unitReynolds;
    logUnitReynolds = Math.log(unitReynolds);
    place = new TransitionPlace(unitReynolds, disturbance);
    interval = new LayerInterval(unitReynolds);
  }

  /**
   * Follows the layer along the stations.
   *
   * @param stations arc lengths from the stagnation point, rising, the first above 0 [chords]
   * @param law coefficients d of the law u - d u δ* = w at each station; 0 gives the edge speed
   * @param given right-hand sides w of the law
   * @param stretch gradient du/ds of the edge speed at the stagnation point
   * @param forced arc length at which the surface forces transition; infinite for a clean one
   * @param warm whether the states of the last solution, station by station, are good guesses
   */
  public void solve(
      double[] stations,
      double[] law,
      double[] given,
      double stretch,
      double forced,
      boolean warm) {
    int before = count;
    count = stations.length;
    reserve();
    if (warm && before != count) {
      align(before);
    }
    failures = 0;
    transition = Double.NaN;
    turbulentSeparation = Double.NaN;
    laminarSeparation = Double.NaN;
    begin(law[0], given[0], stretch);
    LaminarClosure.evaluate(state[0].y[LayerState.SHAPE], interval.one);
    boolean laminar = true;
    for (int i = 1; i < count; i++) {
      double length = stations[i] - stations[i - 1];
      guess.copyFrom(warm ? state[i] : state[i - 1]);
      if (laminar) {
        if (!warm) {
          guess.y[LayerState.SPEED] = Math.log(Math.max(1e-6, Math.abs(given[i])));
        }
        laminarStep(i, stations, law[i], given[i], forced);
        laminar = Double.isNaN(transition);
      } else {
        turbulentStep(i, length, law[i], given[i]);
      }
      if (!laminar && Double.isNaN(turbulentSeparation)) {
        noteSeparation(i, stations);
      }
      interval.one.copyFrom(interval.two);
    }
  }

  private void reserve() {
    if (state.length < count) {
      LayerState[] more = new LayerState[count];
      System.arraycopy(state, 0, more, 0, state.length);
      for (int i = state.length; i < count; i++) {
        more[i] = new LayerState();
      }
      state = more;
      byFirst = new double[count][CARRIED * CARRIED];
      byGiven = new double[count][CARRIED];
    }
  }

  /** Moves the states of the last solution so that the last stations of both face each other. */
  private void align(int before) {
    LayerState[] moved = new LayerState[state.length];
    for (int i = 0; i < state.length; i++) {
      moved[i] = new LayerState();
      if (i < count) {
        moved[i].copyFrom(state[Math.max(0, Math.min(before - 1, i - count + before))]);
      }
    }
    state = moved;
  }

  /** The flow at a stagnation point, which the first station takes over. */
  private void begin(double d, double w, double stretch) {
    double theta = Math.sqrt(LaminarClosure.STAGNATION_GRADIENT / (unitReynolds * stretch));
    double factor = 1 - d * theta * LaminarClosure.STAGNATION;
    double speed = Math.max(1e-6, w / factor);
    double[] y = state[0].y;
    y[LayerState.MOMENTUM] = Math.log(theta);
    y[LayerState.SHAPE] = LaminarClosure.STAGNATION;
    y[LayerState.ENTRAINMENT] = 0.01;
    y[LayerState.PROGRESS] = 0;
    y[LayerState.SPEED] = Math.log(speed);
    java.util.Arrays.fill(byFirst[0], 0);
    java.util.Arrays.fill(byGiven[0], 0);
    byGiven[0][LayerState.SPEED] = 1 / (speed * factor);
  }

  private void laminarStep(int i, double[] stations, double d, double w, double forced) {
    LayerState from = state[i - 1];
    LayerState to = state[i];
    double length = stations[i] - stations[i - 1];
    to.copyFrom(guess);
    if (to.y[LayerState.SHAPE] < 2) {
      to.y[LayerState.SHAPE] = from.y[LayerState.SHAPE];
    }
    to.y[LayerState.ENTRAINMENT] = from.y[LayerState.ENTRAINMENT];
    boolean met = interval.solve(from, to, length, 1, false, d, w);
    double share = 0;
    boolean free = false;
    if (met) {
      interval.sensitivities(place.laminarByFirst, place.laminarByGiven, null);
      share = place.find(from, to, length, (forced - stations[i - 1]) / length);
      if (share >= 1) {
        System.arraycopy(place.laminarByFirst, 0, byFirst[i], 0, CARRIED * CARRIED);
        System.arraycopy(place.laminarByGiven, 0, byGiven[i], 0, CARRIED);
        noteLaminarSeparation(i, stations);
        return;
      }
      free = place.moves();
    }
    turn(i, stations, d, w, share, met, free);
  }

  /** Solves the interval in which turbulence begins. */
  private void turn(
      int i, double[] stations, double d, double w, double share, boolean met, boolean free) {
    LayerState from = state[i - 1];
    LayerState to = state[i];
    double length = stations[i] - stations[i - 1];
    transition = stations[i - 1] + share * length;
    double reynolds = from.logReynolds(logUnitReynolds);
    from.y[LayerState.ENTRAINMENT] = TurbulentClosure.plateEntrainment(reynolds);
    TurbulentClosure.evaluate(
        from.y[LayerState.SHAPE], reynolds, from.y[LayerState.ENTRAINMENT], false, interval.one);
    double h = to.y[LayerState.SHAPE];
    to.copyFrom(guess);
    if (!met || guess.y[LayerState.SHAPE] > h) {
      to.y[LayerState.SHAPE] = Math.min(from.y[LayerState.SHAPE], to.y[LayerState.SHAPE]);
    }
    to.y[LayerState.ENTRAINMENT] =
        Math.max(from.y[LayerState.ENTRAINMENT], to.y[LayerState.ENTRAINMENT]);
    to.y[LayerState.PROGRESS] = 1;
    if (!sound(interval.solve(from, to, length, share, false, d, w), from, to)) {
      startAnew(from, to);
      to.y[LayerState.PROGRESS] = 1;
      if (!sound(interval.solve(from, to, length, share, false, d, w), from, to)) {
        failed(i, d, w);
        return;
      }
    }
    interval.sensitivities(byFirst[i], byGiven[i], bySharing);
    // The entrainment at the first station is set there, not carried.
    for (int k = 0; k < CARRIED; k++) {
      byFirst[i][k * CARRIED + LayerState.ENTRAINMENT] = 0;
    }
    if (free) {
      for (int k = 0; k < COUNT; k++) {
        for (int j = 0; j < CARRIED; j++) {
          byFirst[i][k * CARRIED + j] += bySharing[k] * place.shareByFirst[j];
        }
        byGiven[i][k] += bySharing[k] * place.shareByGiven;
      }
    }
  }

  private void noteLaminarSeparation(int i, double[] stations) {
    double now = state[i].y[LayerState.SHAPE];
    if (Double.isNaN(laminarSeparation) && now > LaminarClosure.SEPARATION) {
      double before = state[i - 1].y[LayerState.SHAPE];
      double share = Math.max(0, (LaminarClosure.SEPARATION - before) / (now - before));
      laminarSeparation = stations[i - 1] + share * (stations[i] - stations[i - 1]);
    }
  }

  private void turbulentStep(int i, double length, double d, double w) {
    LayerState from = state[i - 1];
    LayerState to = state[i];
    to.copyFrom(guess);
    if (!sound(interval.solve(from, to, length, 0, false, d, w), from, to)) {
      to.copyFrom(from);
      if (!sound(interval.solve(from, to, length, 0, false, d, w), from, to)) {
        startAnew(from, to);
        if (!sound(interval.solve(from, to, length, 0, false, d, w), from, to)) {
          failed(i, d, w);
          return;
        }
      }
    }
    interval.sensitivities(byFirst[i], byGiven[i], null);
  }

  /**
   * Whether a solution is a turbulent layer: the equations and the law have others, fuller than any
   * or many times as thick as the station before.
   */
  private static boolean sound(boolean met, LayerState from, LayerState to) {
    return met
        && to.y[LayerState.SHAPE] > FULLEST
        && (to.y[LayerState.SHAPE] > FULL
            || to.y[LayerState.MOMENTUM] - from.y[LayerState.MOMENTUM] < MOST_GROWN);
  }

  private void startAnew(LayerState from, LayerState to) {
    to.copyFrom(from);
    to.y[LayerState.SHAPE] = 1.6;
    to.y[LayerState.ENTRAINMENT] =
        TurbulentClosure.plateEntrainment(from.logReynolds(logUnitReynolds));
  }

  /** No solution: goes on with the station before and the speed that the law then asks for. */
  private void failed(int i, double d, double w) {
    failures++;
    LayerState to = state[i];
    to.copyFrom(state[i - 1]);
    double factor = 1 - d * Math.exp(to.y[LayerState.MOMENTUM]) * to.y[LayerState.SHAPE];
    if (factor > 0.1 && w > 0.01) {
      to.y[LayerState.SPEED] = Math.log(w / factor);
    }
    LayerInterval.takeOver(Math.exp(to.y[LayerState.SPEED]), byFirst[i], byGiven[i]);
    TurbulentClosure.evaluate(
        to.y[LayerState.SHAPE],
        to.logReynolds(logUnitReynolds),
        to.y[LayerState.ENTRAINMENT],
        false,
        interval.two);
  }

  private void noteSeparation(int i, double[] stations) {
    double now = interval.two.turbulent[ClosureValues.FRICTION];
    if (now < 0) {
      double before = interval.one.turbulent[ClosureValues.FRICTION];
      double share = before > 0 ? before / (before - now) : 0;
      turbulentSeparation = stations[i - 1] + share * (stations[i] - stations[i - 1]);
    }
  }

  /** Arc length at which turbulence begins; not a number where the layer stays laminar. */
  public double transition() {
    return transition;
  }

  /** Arc length at which the laminar layer separates; not a number where it does not. */
  public double laminarSeparation() {
    return laminarSeparation;
  }

  /** Arc length from which the turbulent layer is separated; not a number where it is attached. */
  public double turbulentSeparation() {
    return turbulentSeparation;
  }

  /** Stations at which the equations could not be met [1]. */
  public int failures() {
    return failures;
  }

  /** Momentum thickness at a station [chords]. */
  public double momentumThickness(int i) {
    return Math.exp(state[i].y[LayerState.MOMENTUM]);
  }

  /** Shape factor at a station [1]. */
  public double shapeFactor(int i) {
    return state[i].y[LayerState.SHAPE];
  }

  /** Edge speed at a station [onset speeds]. */
  public double speed(int i) {
    return Math.exp(state[i].y[LayerState.SPEED]);
  }

  /** Edge speed times displacement thickness at a station. */
  public double massDefect(int i) {
    return state[i].massDefect();
  }

  LayerState state(int i) {
    return state[i];
  }

  double[] byFirst(int i) {
    return byFirst[i];
  }

  double[] byGiven(int i) {
    return byGiven[i];
  }

  int count() {
    return count;
  }
}
