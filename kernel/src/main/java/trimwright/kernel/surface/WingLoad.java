package trimwright.kernel.surface;

import trimwright.kernel.frame.PlaneForce;

/**
 * What one wing does, its sections met strip by strip; both halves together, per unit of dynamic
 * pressure of the undisturbed stream: multiply by rho V²/2.
 *
 * @param force induced and viscous, water axes, forward and up [m²] with its moment about the
 *     datum, nose up [m³]
 * @param boundDrag induced drag of this wing from the wash at its strips [m²]
 * @param farFieldDrag this wing's share of the induced drag from the wake far behind [m²]; the sum
 *     over all wings is what counts
 * @param profileDrag drag of the sections [m²]
 * @param onset angle from below of what else flows to this wing, see {@link StripCoupling} [rad]
 * @param stripLift lift coefficient of each starboard strip from root to tip, on its own dynamic
 *     pressure [1]
 * @param stripAngle effective angle of attack of each, that of its section in two-dimensional flow
 *     [rad]
 * @param stalled number of starboard strips past their section's largest or most negative lift
 */
public record WingLoad(
    PlaneForce force,
    double boundDrag,
    double farFieldDrag,
    double profileDrag,
    double onset,
    double[] stripLift,
    double[] stripAngle,
    int stalled) {}
