package trimwright.kernel.layer;

import static trimwright.kernel.layer.LayerState.CARRIED;
import static trimwright.kernel.layer.LayerState.COUNT;

/**
 * Finds where in an interval, solved as laminar, turbulence begins, and how that place moves: a
 * workspace for one layer.
 */
final class TransitionPlace {
  /**
   * Logarithm of the least Reθ at which a surface can force transition: 100, chosen. Below 320 no
   * fully turbulent layer has been seen (J. H. Preston, J. Fluid Mechanics 3, 1958, from memory),
   * yet coarse trips are known to work on small wings at a third of that.
   */
  private static final double LEAST_FORCED = Math.log(100);

  /** Largest share of an interval that is laminar where turbulence begins in it. */
  private static final double MOST = 0.99999;

  private final TransitionGrowth growth;
  private final double logUnitReynolds;

  /** Derivatives of the laminar solution by what is carried into it, and by the law: set before. */
  final double[] laminarByFirst = new double[CARRIED * CARRIED];

  final double[] laminarByGiven = new double[CARRIED];

  /** Derivatives of the share found by what is carried into the interval, and by the law. */
  final double[] shareByFirst = new double[CARRIED];

  double shareByGiven;
  private boolean moves;

  TransitionPlace(double unitReynolds, Disturbance disturbance) {
    growth = new TransitionGrowth(disturbance);
    logUnitReynolds = Math.log(unitReynolds);
  }

  /**
   * The share of an interval that stays laminar.
   *
   * @param from first station
   * @param to second station, solved as laminar; receives its progress towards transition
   * @param length of the interval
   * @param forced share after which the surface forces transition
   * @return 0 to 1; 1 where the whole interval is laminar
   */
  double find(LayerState from, LayerState to, double length, double forced) {
    progress(from, to, length);
    double natural = naturalShare(from, to);
    double ripe = ripeShare(from, to);
    double untilForced = Math.max(ripe, forced);
    moves = false;
    if (natural >= 1 && untilForced >= 1) {
      return 1;
    }
    double share = Math.max(0, Math.min(MOST, Math.min(natural, untilForced)));
    if (share > 0 && natural < untilForced) {
      moves = true;
      moveNatural(from, to);
    } else if (share > 0 && ripe >= forced) {
      moves = true;
      moveRipe(from, to);
    }
    return share;
  }

  /** Whether the share found moves with the layer. */
  boolean moves() {
    return moves;
  }

  /**
   * Share of the interval before the progress to transition is complete; 1 or more if it is not.
   */
  private static double naturalShare(LayerState from, LayerState to) {
    double before = from.y[LayerState.PROGRESS];
    double after = to.y[LayerState.PROGRESS];
    return after < 1 ? 1 : (1 - before) / (after - before);
  }

  /** Derivatives of that share by what the first station carries and by the law. */
  private void moveNatural(LayerState from, LayerState to) {
    double before = from.y[LayerState.PROGRESS];
    double span = to.y[LayerState.PROGRESS] - before;
    double factor = -(1 - before) / (span * span);
    int row = LayerState.PROGRESS * CARRIED;
    for (int k = 0; k < COUNT; k++) {
      shareByFirst[k] = factor * laminarByFirst[row + k];
    }
    // The progress at the end contains that at the beginning one for one.
    shareByFirst[LayerState.PROGRESS] = -1 / span;
    shareByGiven = factor * laminarByGiven[LayerState.PROGRESS];
  }

  /**
   * Share of the interval before the layer is thick enough to be forced; infinite if it never is.
   */
  private double ripeShare(LayerState from, LayerState to) {
    double before = from.logReynolds(logUnitReynolds) - LEAST_FORCED;
    double after = to.logReynolds(logUnitReynolds) - LEAST_FORCED;
    if (before >= 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return after <= 0 ? Double.POSITIVE_INFINITY : -before / (after - before);
  }

  private void moveRipe(LayerState from, LayerState to) {
    double before = from.logReynolds(logUnitReynolds) - LEAST_FORCED;
    double after = to.logReynolds(logUnitReynolds) - LEAST_FORCED;
    double span = (after - before) * (after - before);
    double byAfter = before / span;
    double byBefore = -after / span;
    int momentum = LayerState.MOMENTUM * CARRIED;
    int speed = LayerState.SPEED * CARRIED;
    for (int k = 0; k < CARRIED; k++) {
      shareByFirst[k] = byAfter * (laminarByFirst[momentum + k] + laminarByFirst[speed + k]);
    }
    shareByFirst[LayerState.MOMENTUM] += byBefore;
    shareByFirst[LayerState.SPEED] += byBefore;
    shareByGiven =
        byAfter * (laminarByGiven[LayerState.MOMENTUM] + laminarByGiven[LayerState.SPEED]);
  }

  /** Carries the progress towards transition over a laminar interval, with its derivatives. */
  private void progress(LayerState from, LayerState to, double length) {
    double h1 = from.y[LayerState.SHAPE];
    double h2 = to.y[LayerState.SHAPE];
    double r1 = from.logReynolds(logUnitReynolds);
    double r2 = to.logReynolds(logUnitReynolds);
    double w1 = 0.5 * length * Math.exp(-from.y[LayerState.MOMENTUM]);
    double w2 = 0.5 * length * Math.exp(-to.y[LayerState.MOMENTUM]);
    double g1 = growth.rate(h1, r1);
    double g2 = growth.rate(h2, r2);
    to.y[LayerState.PROGRESS] = from.y[LayerState.PROGRESS] + w1 * g1 + w2 * g2;
    int row = LayerState.PROGRESS * CARRIED;
    java.util.Arrays.fill(laminarByFirst, row, row + CARRIED, 0);
    laminarByFirst[row + LayerState.PROGRESS] = 1;
    if (g1 > 0) {
      double byReynolds = w1 * growth.byReynolds(h1, r1);
      laminarByFirst[row + LayerState.MOMENTUM] += byReynolds - w1 * g1;
      laminarByFirst[row + LayerState.SHAPE] += w1 * growth.byShape(h1, r1);
      laminarByFirst[row + LayerState.SPEED] += byReynolds;
    }
    if (g2 > 0) {
      double byReynolds = w2 * growth.byReynolds(h2, r2);
      double byMomentum = byReynolds - w2 * g2;
      double byShape = w2 * growth.byShape(h2, r2);
      for (int j = 0; j < COUNT; j++) {
        laminarByFirst[row + j] +=
            byMomentum * laminarByFirst[LayerState.MOMENTUM * CARRIED + j]
                + byShape * laminarByFirst[LayerState.SHAPE * CARRIED + j]
                + byReynolds * laminarByFirst[LayerState.SPEED * CARRIED + j];
      }
      laminarByGiven[LayerState.PROGRESS] =
          byMomentum * laminarByGiven[LayerState.MOMENTUM]
              + byShape * laminarByGiven[LayerState.SHAPE]
              + byReynolds * laminarByGiven[LayerState.SPEED];
    }
  }
}
