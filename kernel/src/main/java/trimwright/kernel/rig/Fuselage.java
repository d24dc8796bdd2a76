package trimwright.kernel.rig;

/**
 * The fuselage.
 *
 * @param length [m]
 * @param diameter [m]
 * @param frontWingAhead root quarter chord of the front wing ahead of the mast's axis [m]
 * @param stabilizerBehind root quarter chord of the stabilizer behind the mast's axis [m]
 * @param mass [kg]
 * @param massAboveAxis height of the mass centre above the fuselage's axis [m]
 * @param volume [m³]; 0 when it is to be computed
 */
public record Fuselage(
    double length,
    double diameter,
    double frontWingAhead,
    double stabilizerBehind,
    double mass,
    double massAboveAxis,
    double volume) {}
