package trimwright.kernel.rig;

import trimwright.kernel.section.Finish;

/**
 * The mast.
 *
 * @param length from the fuselage's axis to the underside of the board [m]
 * @param chord [m]
 * @param thickness [m]
 * @param baseAngle the deck's angle to the fuselage, nose up positive [rad]
 * @param rake how far the mast's foot swings forward from the right angle to the fuselage [rad]; 0
 *     for a square mast
 * @param mass [kg]
 * @param massAboveAxis height of the mass centre above the fuselage's axis [m]
 * @param volume of the whole mast [m³]; 0 when it is to be computed from the profile
 * @param finish surface state
 */
public record Mast(
    double length,
    double chord,
    double thickness,
    double baseAngle,
    double rake,
    double mass,
    double massAboveAxis,
    double volume,
    Finish finish) {}
