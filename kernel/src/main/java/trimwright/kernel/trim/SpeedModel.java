package trimwright.kernel.trim;

import java.util.List;
import java.util.Optional;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.CraftDrags;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.StripPolars;
import trimwright.kernel.surface.SurfaceFlow;

/**
 * Puts the forces of a case together at one speed and any pitch. What depends on the speed alone,
 * the friction lines and the sections' polars above all, is worked out once. Immutable.
 */
final class SpeedModel {
  private final BalanceModel model;
  private final double speed;
  private final double dynamicPressure;
  private final StripPolars frontPolars;
  private final StripPolars stabilizerPolars;
  private final CraftDrags drags;
  private final double air;

  SpeedModel(BalanceModel model, double speed) {
    this.model = model;
    this.speed = speed;
    dynamicPressure = model.dynamicPressure(speed);
    double perMetre = model.reynoldsPerMetre(speed);
    frontPolars = model.frontSections().at(perMetre);
    stabilizerPolars = model.stabilizerSections().at(perMetre);
    drags = model.craft().drags(speed);
    air = model.craft().airDrag(speed);
  }

  double speed() {
    return speed;
  }

  double dynamicPressure() {
    return dynamicPressure;
  }

  StripPolars frontPolars() {
    return frontPolars;
  }

  StripPolars stabilizerPolars() {
    return stabilizerPolars;
  }

  /** Both wings' polars, for what asks for the worse of the two. */
  List<StripPolars> polars() {
    return List.of(frontPolars, stabilizerPolars);
  }

  /** All forces at a pitch of the fuselage [rad], thrust balancing the drag. */
  Balance at(double pitch) {
    return at(pitch, Double.NaN);
  }

  /** All forces with a given thrust [N]; with NaN thrust balances the drag. */
  Balance at(double pitch, double fixedThrust) {
    Craft craft = model.craft();
    Attitude at = Attitude.of(pitch);
    SurfaceFlow front = model.response().at(0, pitch);
    SurfaceFlow tail = model.response().at(1, pitch);
    PlaneForce frontForce =
        front.force().plus(frontPolars.drag(front.stripLift(), at)).times(dynamicPressure);
    PlaneForce tailForce =
        tail.force().plus(stabilizerPolars.drag(tail.stripLift(), at)).times(dynamicPressure);
    PlaneForce water = drags.at(at);
    PlaneForce parts = craft.weights(at);
    PlaneForce buoyancy = craft.buoyancy(at);
    double resistance = air - frontForce.forward() - tailForce.forward() - water.forward();

    Setup setup = craft.rideCase().setup();
    Optional<Drive> drive = setup.drive();
    double thrust;
    PlaneForce thrustForce;
    double pull = 0;
    if (drive.isPresent()) {
      Drive d = drive.get();
      double level = at.cosWith(model.thrustAngle());
      thrust = Double.isNaN(fixedThrust) ? resistance / level : fixedThrust;
      double ahead = craft.podAhead();
      thrustForce =
          PlaneForce.at(
              thrust * level,
              thrust * at.sinWith(model.thrustAngle()),
              ahead * at.cos() - d.heightAboveFuselage() * at.sin(),
              ahead * at.sin() + d.heightAboveFuselage() * at.cos());
    } else {
      thrust = Double.isNaN(fixedThrust) ? resistance : fixedThrust;
      if (craft.rideCase().pullAboveDeck().isPresent()) {
        thrustForce = PlaneForce.NONE;
        pull = thrust;
      } else {
        // Level, on the fuselage's axis.
        thrustForce = new PlaneForce(thrust, 0, 0);
      }
    }
    PlaneForce foil =
        frontForce.plus(tailForce).plus(water).plus(parts).plus(buoyancy).plus(thrustForce);
    return new Balance(
        this,
        pitch,
        front,
        tail,
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
