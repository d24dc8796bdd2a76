/**
 * A rider on a setup in a water: the parts with their geometry and masses, and the forces on
 * everything that is not a lifting surface (mast, fuselage, drive body, buoyancy, air, weights).
 */
package trimwright.kernel.rig;
