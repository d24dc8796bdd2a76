/**
 * A rider on a setup in a water: the parts with their geometry and masses, and the forces on
 * everything that is not a lifting surface (mast, fuselage, drive body, buoyancy, air, weights).
 *
 * <p>Assumed: bodies along the stream, a mast that pierces the surface, drags that add up. The
 * parts are plain values; their ranges stand in the case file's schema.
 *
 * <p>Sources: Hoerner, Fluid-Dynamic Drag (1965) for bodies, corners and spray; Rankine (1865) and
 * Froude (1889) for the ideal propeller; both recalled, as each class says.
 */
package trimwright.kernel.rig;
