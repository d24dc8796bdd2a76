package trimwright.kernel.trim;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.CraftDrags;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.surface.SpeedLoads;

/**
 * Puts the forces of a case together at one speed and any pitch. What depends on the speed alone,
 * the friction lines and the sections' polars above all, is worked out once.
 */
final class SpeedModel {
  private final BalanceModel model;
  private final double speed;
  private final double dynamicPressure;
  private final SpeedLoads loads;
  private final CraftDrags drags;
  private final double air;

  /** Found when first asked for; the same whoever finds it. */
  private volatile double stall = Double.NaN;

  SpeedModel(BalanceModel model, double speed) {
    this.model = model;
    this.speed = speed;
    dynamicPressure = model.dynamicPressure(speed);
    loads = model.loads(speed);
    drags = model.craft().drags(speed);
    air = model.craft().airDrag(speed);
  }

  double speed() {
    return speed;
  }

  double dynamicPressure() {
    return dynamicPressure;
  }

  /** Both wings' loads over pitch. */
  SpeedLoads loads() {
    return loads;
  }

  /** The pitch at which the first strip of either wing stalls nose up [rad]. */
  double stall() {
    if (Double.isNaN(stall)) {
      stall = loads.stallPitch();
    }
    return stall;
  }

  /** All forces at a pitch of the fuselage [rad], thrust balancing the drag. */
  Balance at(double pitch) {
    return at(pitch, Double.NaN);
  }

  /** All forces with a given thrust [N]; with NaN thrust balances the drag. */
  Balance at(double pitch, double fixedThrust) {
    Craft craft = model.craft();
    Attitude at = Attitude.of(pitch);
    PlaneForce frontForce = loads.force(0, pitch).times(dynamicPressure);
    PlaneForce tailForce = loads.force(1, pitch).times(dynamicPressure);
    PlaneForce water = drags.at(at);
    PlaneForce parts = craft.weights(at);
    PlaneForce buoyancy = craft.buoyancy(at);
    double resistance = air - frontForce.forward() - tailForce.forward() - water.forward();

    ThrustLine line = model.thrustLine();
    double thrust = Double.isNaN(fixedThrust) ? line.thrust(at, resistance) : fixedThrust;
    PlaneForce thrustForce = line.force(at, thrust);
    double pull = line.pull(thrust);
    PlaneForce foil =
        frontForce.plus(tailForce).plus(water).plus(parts).plus(buoyancy).plus(thrustForce);
    return new Balance(
        this,
        pitch,
        frontForce,
        tailForce,
        water,
        parts,
        buoyancy,
        thrust,
        thrustForce,
        pull,
        air,
        model.riderWeight(),
        model.footPressure(at, foil.noseUp(), air - pull),
        foil.up() - model.riderWeight());
  }
}
