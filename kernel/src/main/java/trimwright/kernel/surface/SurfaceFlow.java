package trimwright.kernel.surface;

import trimwright.kernel.frame.PlaneForce;

/**
 * What one wing does in the lattice's flow, both halves together, per unit of dynamic pressure:
 * multiply by rho V²/2.
 *
 * @param force inviscid force in water axes (induced drag as in {@link Lattice#flows}), forward and
 *     up [m²], with its moment about the datum, nose up [m³]; the moment includes the sections' own
 *     moment at zero lift
 * @param boundDrag induced drag of this wing from the velocities at its bound vortices [m²]
 * @param farFieldDrag this wing's share of the induced drag from the wake far behind [m²]; the sum
 *     over all wings is what counts, a single share is not what that wing feels
 * @param stripLift lift coefficient of each starboard strip, from root to tip [1]
 */
public record SurfaceFlow(
    PlaneForce force, double boundDrag, double farFieldDrag, double[] stripLift) {}
