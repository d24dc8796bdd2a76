package trimwright.kernel.rig;

import java.util.Optional;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.propel.BladeCavitation;
import trimwright.kernel.propel.Blades;
import trimwright.kernel.propel.DiscPowertrain;
import trimwright.kernel.propel.DriveLimits;
import trimwright.kernel.propel.Electrics;
import trimwright.kernel.propel.MeasuredPropeller;
import trimwright.kernel.propel.OpenWater;
import trimwright.kernel.propel.Powerplant;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.propel.PropellerDepth;
import trimwright.kernel.propel.Screw;
import trimwright.kernel.propel.ScrewPowertrain;
import trimwright.kernel.propel.SeriesPropeller;
import trimwright.kernel.water.Cavitation;
import trimwright.kernel.water.Water;

/** What drives a case: its drive, battery and water put together. */
public final class Propulsion {
  private Propulsion() {}

  /**
   * The drive of a case: by its measured propeller table, else by its blades as one of the
   * B-series, else by its given efficiency, else by a share of the ideal disc.
   *
   * @param rideCase the case
   * @return empty where there is no drive
   */
  public static Optional<Powertrain> find(RideCase rideCase) {
    return rideCase.setup().drive().map(drive -> of(drive, rideCase));
  }

  private static Powertrain of(Drive drive, RideCase rideCase) {
    Powerplant plant = drive.powerplant();
    Water water = rideCase.water();
    DriveLimits limits =
        new DriveLimits(
            drive.maximumPower(),
            rideCase.setup().battery().stream()
                .flatMapToDouble(battery -> battery.pack().mostPower().stream())
                .findFirst(),
            plant.greatestThrust(),
            plant.highestRevolutions());
    double motor = plant.motorEfficiency().orElse(Electrics.CHOSEN_EFFICIENCY);
    double diameter = drive.propellerDiameter();
    Optional<OpenWater> propeller = openWater(plant, diameter);
    if (propeller.isPresent()) {
      return ScrewPowertrain.of(new Screw(propeller.get(), diameter, water), motor, limits);
    }
    return drive.efficiency() > 0
        ? DiscPowertrain.given(drive.efficiency(), diameter, water.density(), limits)
        : DiscPowertrain.estimated(motor, diameter, water.density(), limits);
  }

  private static Optional<OpenWater> openWater(Powerplant plant, double diameter) {
    if (!plant.openWater().isEmpty()) {
      return Optional.of(new MeasuredPropeller(plant.openWater()));
    }
    return plant.blades().map(b -> series(b, diameter));
  }

  private static OpenWater series(Blades blades, double diameter) {
    return new SeriesPropeller(blades.count(), blades.pitch() / diameter, blades.areaRatio());
  }

  /**
   * How deep the propeller runs, below the troughs of the chop. It stands at the pod's middle.
   *
   * @param craft a craft with a drive
   * @param pitch of the fuselage [rad]
   * @return depth of the shaft and the tips
   * @throws java.util.NoSuchElementException if there is no drive
   */
  public static PropellerDepth depth(Craft craft, double pitch) {
    return new PropellerDepth(
        shaftDepth(craft, pitch) - 0.5 * craft.rideCase().chopHeight(),
        0.5 * craft.rideCase().setup().drive().orElseThrow().propellerDiameter());
  }

  private static double shaftDepth(Craft craft, double pitch) {
    return craft.datumDepth(pitch) - craft.podAbove(Attitude.of(pitch));
  }

  /**
   * The thrust up to which the blades are free of harmful cavitation.
   *
   * @param craft a craft with a drive
   * @param pitch of the fuselage [rad]
   * @return thrust [N]; empty where the blades are not known
   * @throws java.util.NoSuchElementException if there is no drive
   */
  public static Optional<Double> cavitationThrust(Craft craft, double pitch) {
    Drive drive = craft.rideCase().setup().drive().orElseThrow();
    Water water = craft.rideCase().water();
    double pressure =
        Cavitation.pressureAboveVapour(water, shaftDepth(craft, pitch), Craft.GRAVITY);
    return drive
        .powerplant()
        .blades()
        .map(b -> BladeCavitation.thrustLimit(b, drive.propellerDiameter(), pressure));
  }
}
