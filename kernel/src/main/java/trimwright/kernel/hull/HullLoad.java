package trimwright.kernel.hull;

import trimwright.kernel.frame.PlaneForce;

/**
 * The water's force on a board.
 *
 * @param force in water axes, its moment about the bottom's end at the stern [N, N·m]
 * @param dynamic lift of planing [N]
 * @param floating lift of planing's own static part and of buoyancy [N]
 * @param pressureDrag of the lift's tilt with the trim [N]
 * @param waveDrag of what floats [N]
 * @param friction [N]
 * @param bluntDrag of a bow that ploughs [N]
 * @param wettedLength of the bottom, mean [m]
 * @param planingShare how much of the static lift is planing's, see {@link HullAtSpeed} [1]
 * @param displaced volume under the still surface that counts as floating [m³]
 */
public record HullLoad(
    PlaneForce force,
    double dynamic,
    double floating,
    double pressureDrag,
    double waveDrag,
    double friction,
    double bluntDrag,
    double wettedLength,
    double planingShare,
    double displaced) {

  /** Nothing in the water. */
  static final HullLoad NONE = new HullLoad(PlaneForce.NONE, 0, 0, 0, 0, 0, 0, 0, 1, 0);

  /** All drag [N]. */
  public double drag() {
    return -force.forward();
  }

  /** All lift [N]. */
  public double lift() {
    return force.up();
  }
}
