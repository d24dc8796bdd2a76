package trimwright.fitting.judge;

import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.Rider;

/**
 * Places both feet so that their wishes fall short the least: foot shares are straight lines in the
 * place, their mean distance from the wish is convex in it, and so is what it falls short by. Hence
 * the best notch is found by halving, and is the best of all notches.
 */
final class FeetPlacer {
  /** Differences of a shortfall that are rounding [1]. */
  private static final double ROUNDING = 1e-12;

  private final Rider rider;
  private final int notches;
  private final double leastShare;
  private final double mostShare;
  private final Grade feet;
  private final Grade moved;
  private final double feetWeight;
  private final double movedWeight;

  FeetPlacer(RideAsked asked) {
    rider = asked.base().rider();
    notches = asked.notches();
    RideLimits limits = asked.base().limits();
    leastShare = limits.of(RideLimit.LEAST_FOOT_SHARE);
    mostShare = limits.of(RideLimit.MOST_FOOT_SHARE);
    feet = asked.wishes().grade(Wish.FEET);
    moved = asked.wishes().grade(Wish.FEET_MOVED);
    feetWeight = asked.wishes().weight(Wish.FEET);
    movedWeight = asked.wishes().weight(Wish.FEET_MOVED);
  }

  /** No notch keeps the shares inside their limits. */
  static final int NOWHERE = Integer.MIN_VALUE;

  /**
   * The best notch.
   *
   * @param shares at each of the ride's speeds, feet unmoved; those of the first {@code speeds}
   *     count for the wish, all for the limits
   * @param speeds how many of them are the ride's
   * @return notches forward of where the rider likes to stand; {@link #NOWHERE} where none is
   *     inside the limits. Of several equally good ones that which moves least
   */
  int place(double[] shares, int speeds) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double share : shares) {
      least = Math.min(least, share);
      most = Math.max(most, share);
    }
    // Moving the feet forward by d lowers every share by d over the stance.
    double perNotch = RideAsked.NOTCH / rider.stance();
    int low = Math.max(-notches, (int) Math.ceil((most - mostShare) / perNotch - ROUNDING));
    int high = Math.min(notches, (int) Math.floor((least - leastShare) / perNotch + ROUNDING));
    if (low > high) {
      return NOWHERE;
    }
    int first = edge(shares, speeds, low, high, -ROUNDING);
    int last = edge(shares, speeds, first, high, ROUNDING);
    return Math.max(first, Math.min(last, 0));
  }

  /** The first notch from which a step forward gains no more, or loses. */
  private int edge(double[] shares, int speeds, int low, int high, double bound) {
    int from = low;
    int to = high;
    while (from < to) {
      int middle = Math.floorDiv(from + to, 2);
      double change = cost(shares, speeds, middle + 1) - cost(shares, speeds, middle);
      if (bound < 0 ? change >= bound : change > bound) {
        to = middle;
      } else {
        from = middle + 1;
      }
    }
    return from;
  }

  /** What the two wishes fall short by at a notch, times their weights. */
  double cost(double[] shares, int speeds, int notch) {
    return feetWeight * feet.shortfall(meanMiss(shares, speeds, notch))
        + movedWeight * moved.shortfall(Math.abs(notch * RideAsked.NOTCH));
  }

  /** Mean distance of the shares from the wished one. */
  double meanMiss(double[] shares, int speeds, int notch) {
    double moved = notch * RideAsked.NOTCH / rider.stance();
    double sum = 0;
    for (int i = 0; i < speeds; i++) {
      sum += Math.abs(shares[i] - moved - rider.wishedFootShare());
    }
    return sum / speeds;
  }
}
