package trimwright.fitting.judge;

import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.propel.PropellerDepth;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.turn.TurnTips;

/** What of a setup is where: geometry alone, for both ways of judging. */
final class Room {
  /** Half-width of the last bracket of bank [rad]: far below what anybody notices. */
  private static final double BANK_TOLERANCE = Math.toRadians(0.01);

  private Room() {}

  /** Whether the ride is possible: the board out of the water, the drive in it. */
  static boolean isThere(RideCase c) {
    Setup s = c.setup();
    double axisDepth = c.immersion() + s.frontWing().height();
    return axisDepth < s.mast().length()
        && s.drive().map(d -> d.heightAboveFuselage() < axisDepth).orElse(true);
  }

  /** Depth of the highest wing tip below the troughs of the chop [m]. */
  static double tipDepth(Craft craft, double pitch, double bank) {
    TurnMotion motion = new TurnMotion(pitch, bank, 0, 0);
    double datum = craft.datumDepth(pitch);
    double least = Double.POSITIVE_INFINITY;
    for (PlacedWing wing : craft.wings()) {
      least = Math.min(least, TurnTips.depth(wing, motion, datum));
    }
    return least - 0.5 * craft.rideCase().chopHeight();
  }

  /** Depth of the propeller's upper tip below the troughs [m]; infinite without a drive. */
  static double propellerDepth(Craft craft, double pitch) {
    if (craft.rideCase().setup().drive().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    PropellerDepth depth = Propulsion.depth(craft, pitch);
    return depth.shaft() - depth.radius();
  }

  /**
   * The bank at which the upper tip comes as near to the surface as it may, up to the largest bank
   * looked at [rad]; 0 where it does without a bank.
   */
  static double tipBank(Craft craft, double pitch) {
    double limit = craft.rideCase().limits().of(RideLimit.TIP_DEPTH);
    double low = 0;
    double high = craft.rideCase().limits().of(RideLimit.BANK);
    if (tipDepth(craft, pitch, high) >= limit) {
      return high;
    }
    if (tipDepth(craft, pitch, 0) < limit) {
      return 0;
    }
    while (high - low > BANK_TOLERANCE) {
      double middle = 0.5 * (low + high);
      if (tipDepth(craft, pitch, middle) >= limit) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
