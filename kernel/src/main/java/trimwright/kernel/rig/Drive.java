package trimwright.kernel.rig;

import trimwright.kernel.propel.Powerplant;

/**
 * The motor pod with its propeller.
 *
 * @param heightAboveFuselage of the thrust line above the fuselage's axis [m]
 * @param behindMast of the pod's middle behind the mast's axis at that height [m]
 * @param thrustAngle of the thrust line to the fuselage, nose up positive [rad]
 * @param diameter of the pod [m]
 * @param length of the pod [m]
 * @param propellerDiameter [m]
 * @param maximumPower electric [W]
 * @param efficiency thrust power over electric power [1]; 0 when it is to be estimated
 * @param mass [kg]
 * @param massAboveAxis height of the mass centre above the fuselage's axis [m]
 * @param volume of the pod [m³]; 0 when it is to be computed
 * @param powerplant what is known of propeller, motor and their limits
 */
public record Drive(
    double heightAboveFuselage,
    double behindMast,
    double thrustAngle,
    double diameter,
    double length,
    double propellerDiameter,
    double maximumPower,
    double efficiency,
    double mass,
    double massAboveAxis,
    double volume,
    Powerplant powerplant) {

  /**
   * A drive of whose inside nothing is known.
   *
   * @param heightAboveFuselage as above [m]
   * @param behindMast as above [m]
   * @param thrustAngle as above [rad]
   * @param diameter of the pod [m]
   * @param length of the pod [m]
   * @param propellerDiameter [m]
   * @param maximumPower electric [W]
   * @param efficiency as above [1]
   * @param mass [kg]
   * @param massAboveAxis as above [m]
   * @param volume of the pod [m³]
   */
  public Drive(
      double heightAboveFuselage,
      double behindMast,
      double thrustAngle,
      double diameter,
      double length,
      double propellerDiameter,
      double maximumPower,
      double efficiency,
      double mass,
      double massAboveAxis,
      double volume) {
    this(
        heightAboveFuselage,
        behindMast,
        thrustAngle,
        diameter,
        length,
        propellerDiameter,
        maximumPower,
        efficiency,
        mass,
        massAboveAxis,
        volume,
        Powerplant.UNKNOWN);
  }
}
