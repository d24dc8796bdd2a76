package trimwright.kernel.trim;

import java.util.EnumSet;
import java.util.Set;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.BoardHeight;

/** Holds balances of one case against the limits of the rideable window. Immutable. */
final class LimitCheck {
  /**
   * Sizes over which distances to a limit without a size of its own are counted: a static margin
   * and a height that people notice [m]. Chosen; only their order of size matters.
   */
  private static final double MARGIN_SIZE = 0.02;

  private static final double HEIGHT_SIZE = 0.1;

  private final BalanceModel model;
  private final RideLimits limits;

  LimitCheck(BalanceModel model, RideLimits limits) {
    this.model = model;
    this.limits = limits;
  }

  /**
   * The limits that a balance breaks.
   *
   * @param share part of the load on the front foot [1]
   * @param stallMargin nose-up change of pitch to the first stall [rad]
   * @param foil the foil's own static margin, without the deck's lever [m]
   */
  Set<Limit> broken(Balance b, double share, double stallMargin, double foil) {
    Set<Limit> broken = EnumSet.noneOf(Limit.class);
    if (limits.breaks(RideLimit.STALL_MARGIN, stallMargin)) {
      broken.add(Limit.STALL_MARGIN);
    }
    if (limits.breaks(RideLimit.LEAST_FOOT_SHARE, share)
        || limits.breaks(RideLimit.MOST_FOOT_SHARE, share)) {
      broken.add(Limit.FOOT_SHARE);
    }
    if (limits.breaks(RideLimit.STATIC_MARGIN, foil)) {
      broken.add(Limit.STATIC_MARGIN);
    }
    if (limits.breaks(RideLimit.PITCH, Math.abs(deckPitch(b)))) {
      broken.add(Limit.PITCH);
    }
    if (limits.breaks(
        RideLimit.BOARD_CLEARANCE, BoardHeight.aboveCrests(model.craft(), b.pitch()))) {
      broken.add(Limit.BOARD_CLEARANCE);
    }
    return broken;
  }

  /** How far inside all of them it lies, the least of all; negative outside [1]. */
  double slack(Balance b, double share, double stallMargin, double foil) {
    double leastShare = limits.of(RideLimit.LEAST_FOOT_SHARE);
    double least = stallMargin / limits.of(RideLimit.STALL_MARGIN) - 1;
    least = Math.min(least, share / leastShare - 1);
    least = Math.min(least, (limits.of(RideLimit.MOST_FOOT_SHARE) - share) / leastShare);
    least = Math.min(least, (foil - limits.of(RideLimit.STATIC_MARGIN)) / MARGIN_SIZE);
    least = Math.min(least, 1 - Math.abs(deckPitch(b)) / limits.of(RideLimit.PITCH));
    return Math.min(
        least,
        (BoardHeight.aboveCrests(model.craft(), b.pitch()) - limits.of(RideLimit.BOARD_CLEARANCE))
            / HEIGHT_SIZE);
  }

  private double deckPitch(Balance b) {
    return b.pitch() + model.craft().deck().baseAngle();
  }
}
