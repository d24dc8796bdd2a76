package trimwright.kernel.hull;

import trimwright.kernel.frame.PlaneForce;

/**
 * A craft with its board on the water at one speed and trim, the vertical forces in balance; what
 * the thrust has over goes into speed.
 *
 * @param speed [m/s]
 * @param trim deck and bottom against the horizontal, bow up positive [rad]
 * @param sternDepth of the bottom's end at the stern below the still surface [m]; 0 where the board
 *     just leaves the water
 * @param datumDepth depth of the mast's foot on the fuselage's axis [m]
 * @param wettedMast length of mast under water [m]
 * @param hull the water's force on the board, its moment about the stern
 * @param hullForce the same, moment about the datum
 * @param wings force of both wings
 * @param drags of mast, spray, corners, fuselage and pod
 * @param parts weights of board, battery and foil
 * @param buoyancy of foil, mast and pod
 * @param thrust along its line, or the pull needed [N]
 * @param levelPush level part of the thrust or pull [N]
 * @param thrustForce the drive's force; none where a handle pulls
 * @param inertia of board, battery, foil and the water that goes with the board
 * @param friction of the feet on the deck, aft: air, body in the water, the rider's own inertia,
 *     less a handle's pull [N]
 * @param bodyBuoyancy of the rider's body in the water [N]
 * @param drag all resistance of water and air [N]
 * @param mass of all, with the water that goes along [kg]
 * @param acceleration forward [m/s²]
 * @param footPressure where the feet must press, ahead of the mast's axis along the deck [m]
 * @param up sum of all vertical forces [N]: vanishes on the water; above 0 where the board has left
 *     it
 */
public record WaterState(
    double speed,
    double trim,
    double sternDepth,
    double datumDepth,
    double wettedMast,
    HullLoad hull,
    PlaneForce hullForce,
    PlaneForce wings,
    PlaneForce drags,
    PlaneForce parts,
    PlaneForce buoyancy,
    double thrust,
    double levelPush,
    PlaneForce thrustForce,
    PlaneForce inertia,
    double friction,
    double bodyBuoyancy,
    double drag,
    double mass,
    double acceleration,
    double footPressure,
    double up) {

  /** Everything but what acts through the feet. */
  public PlaneForce withoutFeet() {
    return hullForce
        .plus(wings)
        .plus(drags)
        .plus(parts)
        .plus(buoyancy)
        .plus(thrustForce)
        .plus(inertia);
  }

  /**
   * The level part of another thrust along the same line.
   *
   * @param other thrust [N]
   * @return [N]
   */
  public double level(double other) {
    return thrust > 0 ? other * levelPush / thrust : other;
  }
}
