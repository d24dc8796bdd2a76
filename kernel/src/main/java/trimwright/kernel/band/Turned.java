package trimwright.kernel.band;

import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.SurfaceResponse;

/**
 * The downwash at the stabilizer, read off the flow as it is and the flow with the stabilizer
 * turned: how far below the angle that its lift asks for the stabilizer stands to the stream.
 */
final class Turned {
  private static final int STABILIZER = 1;

  private final SurfaceResponse flow;
  private final SurfaceResponse turnedFlow;
  private final double turn;

  /** Angle of no lift of the stabilizer alone, against the fuselage [rad]. */
  private final double noLift;

  /**
   * Two flows.
   *
   * @param setup the setup
   * @param flow of the case
   * @param turnedFlow with the stabilizer turned
   * @param turn by which it is turned, leading edge up positive [rad]
   */
  Turned(Setup setup, SurfaceResponse flow, SurfaceResponse turnedFlow, double turn) {
    this.flow = flow;
    this.turnedFlow = turnedFlow;
    this.turn = turn;
    FittedWing wing = setup.stabilizer();
    noLift = meanZeroLift(wing) - wing.setting() - setup.shim();
  }

  /** Zero-lift angle less twist, mean over the area: strip theory. */
  private static double meanZeroLift(FittedWing wing) {
    double sum = 0;
    double area = 0;
    for (int i = 1; i < wing.shape().stations().size(); i++) {
      Station a = wing.shape().stations().get(i - 1);
      Station b = wing.shape().stations().get(i);
      double piece = 0.5 * (a.chord() + b.chord()) * (b.fraction() - a.fraction());
      double angle =
          0.5 * (a.section().zeroLiftAngle() - a.twist() + b.section().zeroLiftAngle() - b.twist());
      sum += piece * angle;
      area += piece;
    }
    return sum / area;
  }

  /**
   * The downwash angle, averaged over the stabilizer as its lift averages it.
   *
   * @param pitch of the fuselage [rad]
   * @return down positive [rad]
   */
  double downwash(double pitch) {
    double within = Math.max(turnedFlow.from(), Math.min(turnedFlow.to(), pitch));
    double lift = flow.at(STABILIZER, within).force().up();
    double slope = (turnedFlow.at(STABILIZER, within).force().up() - lift) / turn;
    return within - noLift - lift / slope;
  }
}
