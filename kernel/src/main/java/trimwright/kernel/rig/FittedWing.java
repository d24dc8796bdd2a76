package trimwright.kernel.rig;

import trimwright.kernel.section.Finish;
import trimwright.kernel.surface.WingShape;

/**
 * A front wing or a stabilizer as it is bolted on.
 *
 * @param shape geometry
 * @param setting root chord's angle to the fuselage without any shim, leading edge up positive
 *     [rad]
 * @param height root quarter chord above the fuselage's axis [m]
 * @param mass [kg]
 * @param massAboveAxis height of the mass centre above the fuselage's axis [m]
 * @param volume [m³]; 0 when it is to be computed from the sections
 * @param finish surface state
 */
public record FittedWing(
    WingShape shape,
    double setting,
    double height,
    double mass,
    double massAboveAxis,
    double volume,
    Finish finish) {}
