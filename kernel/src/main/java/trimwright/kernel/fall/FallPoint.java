package trimwright.kernel.fall;

import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

/**
 * Both margins at one speed in one posture.
 *
 * @param speed [m/s]
 * @param posture of the rider
 * @param noseDrop the nose-drop margin
 * @param breach the breach margin
 */
public record FallPoint(double speed, Posture posture, NoseDrop noseDrop, Breach breach) {

  /** Whether the bow stays clear as long as first flights ask for. */
  public boolean bowClear(RideLimits limits) {
    return !limits.breaks(RideLimit.BOW_CLEAR_TIME, noseDrop.bowClearFor());
  }

  /** Whether nothing comes out as long as first flights ask for. */
  public boolean staysIn(RideLimits limits) {
    return !limits.breaks(RideLimit.BREACH_TIME, breach.margin());
  }

  /** Whether both limits of first flights are met. */
  public boolean inside(RideLimits limits) {
    return bowClear(limits) && staysIn(limits);
  }
}
