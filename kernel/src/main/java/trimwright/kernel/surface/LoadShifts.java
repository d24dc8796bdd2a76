package trimwright.kernel.surface;

/**
 * How the lattice's loads at one pitch answer to a turn of the flow that each strip sees, per unit
 * of dynamic pressure. Linear: what a lattice is. Strips count from the front wing's root to the
 * last wing's tip.
 *
 * @param strips number of strips of all wings on one half
 * @param lift change of all strips' lift coefficients with the first turn, then with the second,
 *     and so on [1/rad]
 * @param up change of the first wing's lift with each turn, then of the second's [m²/rad]
 * @param noseUp change of each wing's moment about the datum, likewise [m³/rad]
 * @param farDrag what all strips' drag in the far wake takes from the first strip's lift
 *     coefficient, then from the second's; see {@link FarField#form} [m²]
 */
public record LoadShifts(
    int strips, double[] lift, double[] up, double[] noseUp, double[] farDrag) {}
