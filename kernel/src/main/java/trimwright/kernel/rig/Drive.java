package trimwright.kernel.rig;

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
    double volume) {}
