package trimwright.kernel.trim;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Footing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.section.Finish;
import trimwright.kernel.surface.Loads;
import trimwright.kernel.surface.SpeedLoads;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.surface.WingShape;

/** Puts the forces of a case together at any pitch and speed. Immutable. */
final class BalanceModel {
  private final Craft craft;
  private final SurfaceResponse response;
  private final Loads loads;
  private final double riderWeight;
  private final Footing footing;
  private final ThrustLine thrustLine;

  BalanceModel(Craft craft, SurfaceResponse response) {
    this.craft = craft;
    this.response = response;
    RideCase c = craft.rideCase();
    loads =
        response.loads(
            new Sections(
                c.setup().frontWing().shape(),
                c.setup().frontWing().finish(),
                c.setup().stabilizer().shape(),
                c.setup().stabilizer().finish(),
                c.water().kinematicViscosity(),
                craft.factors().waves(),
                craft.factors().wake()),
            WingCouplings.of(craft, response));
    riderWeight = c.rider().allMass() * Craft.GRAVITY;
    footing = new Footing(craft.deck(), riderWeight);
    thrustLine = new ThrustLine(craft);
  }

  Craft craft() {
    return craft;
  }

  SurfaceResponse response() {
    return response;
  }

  /** Both wings' loads at a speed [m/s]. */
  SpeedLoads loads(double speed) {
    return loads.at(speed);
  }

  double dynamicPressure(double speed) {
    return 0.5 * craft.rideCase().water().density() * speed * speed;
  }

  double reynoldsPerMetre(double speed) {
    return speed / craft.rideCase().water().kinematicViscosity();
  }

  /** Everything at one speed [m/s]. */
  SpeedModel at(double speed) {
    return new SpeedModel(this, speed);
  }

  /** All forces at a pitch of the fuselage [rad] and a speed [m/s], thrust balancing the drag. */
  Balance at(double pitch, double speed) {
    return at(speed).at(pitch);
  }

  double riderWeight() {
    return riderWeight;
  }

  ThrustLine thrustLine() {
    return thrustLine;
  }

  /** Where the feet must press, see {@link Footing#pressure}. */
  double footPressure(Attitude at, double foilMoment, double friction) {
    return footing.pressure(at, foilMoment, friction);
  }

  /** Moment of what acts through the feet, pressed at a point of the deck [N·m]. */
  double feetMoment(Balance balance, double footPressure) {
    MomentTerms terms = terms(balance, footPressure);
    return terms.feet()
        + terms.deckLever()
        + terms.air()
        - balance.pull() * footAbove(balance.pitch(), footPressure);
  }

  private double footAbove(double pitch, double footPressure) {
    Deck deck = craft.deck();
    return deck.footingAbove(pitch) + footPressure * Math.sin(pitch + deck.baseAngle());
  }

  /** The moment balance about the datum, term by term. */
  MomentTerms terms(Balance b, double footPressure) {
    Deck deck = craft.deck();
    double above = footAbove(b.pitch(), footPressure);
    return new MomentTerms(
        b.frontWing().noseUp(),
        b.stabilizer().noseUp(),
        b.thrustForce().noseUp() - b.pull() * above,
        b.drags().noseUp(),
        b.parts().noseUp(),
        -b.riderWeight() * footPressure * Math.cos(b.pitch() + deck.baseAngle()),
        -b.riderWeight() * deck.footingAhead(b.pitch()),
        b.air() * above,
        b.buoyancy().noseUp());
  }

  /** What the loads follow from besides the response. */
  private record Sections(
      WingShape front,
      Finish frontFinish,
      WingShape tail,
      Finish tailFinish,
      double viscosity,
      double waves,
      double wake) {}
}
