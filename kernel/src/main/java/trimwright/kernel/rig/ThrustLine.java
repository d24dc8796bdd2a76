package trimwright.kernel.rig;

import java.util.Optional;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;

/**
 * What drives a craft: a drive along its own line, a pull at a handle, or, where neither is known,
 * a level force on the fuselage's axis. Immutable.
 */
public final class ThrustLine {
  private final boolean driven;
  private final boolean pulled;
  private final double ahead;
  private final double above;
  private final Attitude angle;

  /**
   * The thrust line of a craft.
   *
   * @param craft the craft
   */
  public ThrustLine(Craft craft) {
    Optional<Drive> drive = craft.rideCase().setup().drive();
    driven = drive.isPresent();
    pulled = !driven && craft.rideCase().pullAboveDeck().isPresent();
    ahead = craft.podAhead();
    above = drive.map(Drive::heightAboveFuselage).orElse(0.0);
    angle = Attitude.of(drive.map(Drive::thrustAngle).orElse(0.0));
  }

  /**
   * Thrust against a resistance.
   *
   * @param at attitude of the fuselage
   * @param resistance level, against the direction of travel [N]
   * @return along the thrust line [N]
   */
  public double thrust(Attitude at, double resistance) {
    return driven ? resistance / at.cosWith(angle) : resistance;
  }

  /**
   * The force of a thrust on the craft without the rider.
   *
   * @param at attitude of the fuselage
   * @param thrust along the thrust line [N]
   * @return force with its moment about the datum; none where a handle pulls: that goes through the
   *     feet
   */
  public PlaneForce force(Attitude at, double thrust) {
    if (driven) {
      return PlaneForce.at(
          thrust * at.cosWith(angle),
          thrust * at.sinWith(angle),
          ahead * at.cos() - above * at.sin(),
          ahead * at.sin() + above * at.cos());
    }
    return pulled ? PlaneForce.NONE : new PlaneForce(thrust, 0, 0);
  }

  /**
   * The part of a thrust that pulls at a handle.
   *
   * @param thrust [N]
   * @return level [N]
   */
  public double pull(double thrust) {
    return pulled ? thrust : 0;
  }
}
