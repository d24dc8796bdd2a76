package trimwright.fitting.judge;

import java.util.List;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.propel.PropellerDepth;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.turn.TurnTips;

/** What of a setup is where: geometry alone, for both ways of judging. */
final class Room {
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
   * looked at [rad]; 0 where it does without a bank. In closed form: with a tip x ahead, y aside
   * and z below the datum its depth is the datum's less x sin p less y cos p sin b plus z cos p cos
   * b at a pitch p and a bank b (rotations in the order of {@link TurnMotion}).
   */
  static double tipBank(Craft craft, double pitch) {
    double limit =
        craft.rideCase().limits().of(RideLimit.TIP_DEPTH) + 0.5 * craft.rideCase().chopHeight();
    double least = craft.rideCase().limits().of(RideLimit.BANK);
    double datum = craft.datumDepth(pitch);
    for (PlacedWing wing : craft.wings()) {
      List<Station> stations = wing.shape().stations();
      Station tip = stations.get(stations.size() - 1);
      double x = wing.ahead() + tip.ahead();
      double y = 0.5 * wing.shape().span();
      double z = -(wing.above() + tip.above());
      double level = datum - x * Math.sin(pitch) - limit;
      double size = Math.cos(pitch) * Math.hypot(y, z);
      double lead = Math.atan2(z, y);
      // The tip is at the limit where level = size sin(b - lead).
      if (level < size * Math.sin(-lead)) {
        return 0;
      }
      if (level < size) {
        least = Math.min(least, Math.asin(level / size) + lead);
      }
    }
    return least;
  }
}
