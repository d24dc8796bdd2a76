package trimwright.fitting.judge;

import trimwright.kernel.quick.QuickCase;
import trimwright.kernel.quick.QuickSpeed;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;

/**
 * A board, mast and drive over a pair of wings, with all that no shim, track or stance changes. The
 * mast stands in the middle of its track.
 */
public final class QuickRig {
  private final Craft craft;
  private final QuickCase quick;
  private final QuickSpeed[] atSpeeds;

  QuickRig(RideCase middle, double[] speeds) {
    craft = new Craft(middle);
    quick = new QuickCase(craft);
    atSpeeds = new QuickSpeed[speeds.length];
    for (int i = 0; i < speeds.length; i++) {
      atSpeeds[i] = quick.at(speeds[i]);
    }
  }

  Craft craft() {
    return craft;
  }

  RideCase rideCase() {
    return craft.rideCase();
  }

  QuickSpeed at(int index) {
    return atSpeeds[index];
  }

  QuickSpeed at(double speed) {
    return quick.at(speed);
  }
}
