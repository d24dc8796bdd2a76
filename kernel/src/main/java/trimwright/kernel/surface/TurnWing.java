package trimwright.kernel.surface;

/**
 * What one surface does in a turn, per unit of dynamic pressure at the datum: multiply by rho V²/2.
 * Strips are counted from the port tip to the starboard one, on a mast from its foot up.
 *
 * @param force in water axes: forward, to starboard, down [m²]
 * @param moment about the datum and the same axes [m³]
 * @param stripForce three components of each strip's force, one strip after the other [m²]
 * @param stripPlace where it acts, in water axes from the datum [m]
 * @param stripLift lift coefficient of each strip on the speed that it meets [1]
 * @param stallMargin rise of a strip's angle of attack to its section's largest lift, the least of
 *     all strips [rad]; infinite for a mast
 */
public record TurnWing(
    double[] force,
    double[] moment,
    double[] stripForce,
    double[] stripPlace,
    double[] stripLift,
    double stallMargin) {}
