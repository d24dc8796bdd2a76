package trimwright.fitting.match;

import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.turn.TurnTips;

/** The bank at which a tip comes as near to the surface as it may, by halving. */
final class ScreenBank {
  private ScreenBank() {}

  static double of(Craft craft, double pitch) {
    double low = 0;
    double high = craft.rideCase().limits().of(RideLimit.BANK);
    if (room(craft, pitch, high) >= 0) {
      return high;
    }
    if (room(craft, pitch, 0) < 0) {
      return 0;
    }
    while (high - low > 1e-12) {
      double middle = 0.5 * (low + high);
      if (room(craft, pitch, middle) >= 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double room(Craft craft, double pitch, double bank) {
    double least = Double.POSITIVE_INFINITY;
    for (PlacedWing wing : craft.wings()) {
      least =
          Math.min(
              least,
              TurnTips.depth(wing, new TurnMotion(pitch, bank, 0, 0), craft.datumDepth(pitch)));
    }
    return least
        - 0.5 * craft.rideCase().chopHeight()
        - craft.rideCase().limits().of(RideLimit.TIP_DEPTH);
  }
}
