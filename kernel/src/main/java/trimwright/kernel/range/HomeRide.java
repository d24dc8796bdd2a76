package trimwright.kernel.range;

import java.util.OptionalDouble;

/**
 * Getting home.
 *
 * @param speed through the water that takes the least energy [m/s]
 * @param overGround speed over the ground then [m/s]
 * @param duration of the way home [s]
 * @param energy that it takes from the battery [J]
 * @param shareOfUsable that energy over what a full battery has to use [1]
 * @param reserve share of what may be used that is to be left at home [1]
 * @param farthest how far out one may ride at the wished speed, wind and current then from the
 *     other side, so as to be home with the reserve [m]; empty where the wished speed has no trim
 *     then
 */
public record HomeRide(
    double speed,
    double overGround,
    double duration,
    double energy,
    double shareOfUsable,
    double reserve,
    OptionalDouble farthest) {

  /** Whether a full battery alone brings one home with the reserve. */
  public boolean enough() {
    return shareOfUsable <= 1 - reserve;
  }
}
