package trimwright.kernel.trim;

import java.util.EnumSet;
import java.util.Set;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;

/** Holds balances of one case against the limits of the rideable window. Immutable. */
final class LimitCheck {
  /**
   * Sizes over which distances to a limit without a size of its own are counted: a static margin
   * and a height that people notice [m]. Chosen; only their order of size matters.
   */
  private static final double MARGIN_SIZE = 0.02;

  private static final double HEIGHT_SIZE = 0.1;

  private final BalanceModel model;
  private final TrimLimits limits;

  LimitCheck(BalanceModel model, TrimLimits limits) {
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
    if (stallMargin < limits.stallMargin()) {
      broken.add(Limit.STALL_MARGIN);
    }
    if (share < limits.leastFootShare() || share > limits.mostFootShare()) {
      broken.add(Limit.FOOT_SHARE);
    }
    if (foil < 0) {
      broken.add(Limit.STATIC_MARGIN);
    }
    if (Math.abs(deckPitch(b)) > limits.pitch()) {
      broken.add(Limit.PITCH);
    }
    if (clearance(b) < 0) {
      broken.add(Limit.BOARD_CLEARANCE);
    }
    return broken;
  }

  /** How far inside all of them it lies, the least of all; negative outside [1]. */
  double slack(Balance b, double share, double stallMargin, double foil) {
    double least = stallMargin / limits.stallMargin() - 1;
    least = Math.min(least, share / limits.leastFootShare() - 1);
    least = Math.min(least, (limits.mostFootShare() - share) / limits.leastFootShare());
    least = Math.min(least, foil / MARGIN_SIZE);
    least = Math.min(least, 1 - Math.abs(deckPitch(b)) / limits.pitch());
    return Math.min(least, clearance(b) / HEIGHT_SIZE);
  }

  private double deckPitch(Balance b) {
    return b.pitch() + model.craft().deck().baseAngle();
  }

  /**
   * Height of the lower end of the board's underside above the crests of the chop [m]. The board's
   * middle is taken to lie at its mass centre.
   */
  private double clearance(Balance b) {
    Craft craft = model.craft();
    Board board = craft.rideCase().setup().board();
    Deck deck = craft.deck();
    double middle = board.massCentreAhead() - board.track();
    double lowest = Double.POSITIVE_INFINITY;
    for (int end = -1; end <= 1; end += 2) {
      double along = middle + end * 0.5 * board.length();
      double ahead = deck.aheadInFoil(along, board.thickness());
      double above = deck.aboveInFoil(along, board.thickness());
      lowest = Math.min(lowest, ahead * Math.sin(b.pitch()) + above * Math.cos(b.pitch()));
    }
    return lowest - craft.datumDepth(b.pitch()) - 0.5 * craft.rideCase().chopHeight();
  }
}
