package trimwright.kernel.trim;

import trimwright.kernel.frame.PlaneForce;

/**
 * All forces on board and foil at one pitch and speed, in water axes with moments about the datum;
 * thrust is what balances the drag, the foot-pressure centre is what balances the moment. In trim
 * {@link #up} vanishes.
 *
 * @param at what the speed alone decides
 * @param pitch of the fuselage [rad]
 * @param frontWing force of the front wing [N, N·m]
 * @param stabilizer force of the stabilizer
 * @param drags mast, spray, corners, fuselage, pod
 * @param parts weights of board, battery and foil
 * @param buoyancy of all submerged parts
 * @param thrust along its line [N]
 * @param thrustForce the drive's or the level force's; none where a handle pulls
 * @param pull a handle's pull, as friction at the deck [N]
 * @param air drag of the air on the rider, as friction at the deck [N]
 * @param riderWeight [N]
 * @param footPressure ahead of the mast's axis, along the deck [m]
 * @param up sum of all vertical forces [N]
 */
record Balance(
    SpeedModel at,
    double pitch,
    PlaneForce frontWing,
    PlaneForce stabilizer,
    PlaneForce drags,
    PlaneForce parts,
    PlaneForce buoyancy,
    double thrust,
    PlaneForce thrustForce,
    double pull,
    double air,
    double riderWeight,
    double footPressure,
    double up) {

  /** Speed [m/s]. */
  double speed() {
    return at.speed();
  }

  /** Everything but what acts through the feet. */
  PlaneForce withoutFeet() {
    return frontWing.plus(stabilizer).plus(drags).plus(parts).plus(buoyancy).plus(thrustForce);
  }

  /** Drag of the water and the air together [N]. */
  double resistance() {
    return air - frontWing.forward() - stabilizer.forward() - drags.forward();
  }
}
