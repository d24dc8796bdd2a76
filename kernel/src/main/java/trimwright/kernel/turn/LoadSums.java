package trimwright.kernel.turn;

import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.surface.TurnWing;

/** Bending moments from the forces of a turn. */
final class LoadSums {
  private LoadSums() {}

  /**
   * Bending of the more loaded half of a wing at its root: moment of the half's strips about the
   * middle of the span, along the path.
   *
   * @param wing its loads
   * @param pressure dynamic pressure [Pa]
   * @return size [N·m]
   */
  static double root(TurnWing wing, double pressure) {
    int n = wing.stripLift().length;
    double[] root = new double[3];
    for (int c = 0; c < 3; c++) {
      // The two strips beside the middle lie evenly about it
      root[c] = 0.5 * (wing.stripPlace()[3 * (n / 2 - 1) + c] + wing.stripPlace()[3 * (n / 2) + c]);
    }
    return pressure * Math.max(half(wing, root, 0, n / 2), half(wing, root, n / 2, n));
  }

  private static double half(TurnWing wing, double[] root, int from, int to) {
    double moment = 0;
    for (int k = from; k < to; k++) {
      double[] f = wing.stripForce();
      double[] r = wing.stripPlace();
      moment += (r[3 * k + 1] - root[1]) * f[3 * k + 2] - (r[3 * k + 2] - root[2]) * f[3 * k + 1];
    }
    return Math.abs(moment);
  }

  /**
   * All forces below the board, gathered about where the mast meets it.
   *
   * @param water what water, thrust and drags do, without masses and rider
   * @param craft the craft
   * @param motion how it lies
   * @param speed [m/s]
   * @param path its circle
   * @return forward and sideways bending: about the path's axis and the craft's sideways axis
   */
  static double[] mast(
      TurnForces water, Craft craft, TurnMotion motion, double speed, TurnPath path) {
    TurnForces below = new TurnForces();
    below.add(water.force, water.moment, 1);
    TurnBalance.inertia(
        below,
        motion,
        speed,
        path,
        craft.foilMass(),
        new double[] {craft.foilMassAhead(), 0, -craft.foilMassAbove()});
    RideCase c = craft.rideCase();
    double thickness = c.setup().board().thickness();
    double[] top = new double[3];
    motion.place(
        craft.deck().aheadInFoil(0, thickness), 0, -craft.deck().aboveInFoil(0, thickness), top, 0);
    TurnForces about = new TurnForces();
    about.add(below.force, below.moment, 1);
    about.add(-below.force[0], -below.force[1], -below.force[2], top);
    return new double[] {about.moment[0], about.noseUp(motion.bank())};
  }
}
