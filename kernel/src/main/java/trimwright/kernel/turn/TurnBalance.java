package trimwright.kernel.turn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.MastDrag;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.ProfileForces;
import trimwright.kernel.surface.StripPolars;
import trimwright.kernel.surface.TurnFlow;
import trimwright.kernel.surface.TurnLattice;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.surface.TurnWing;

/**
 * Puts the forces of a turn together at a speed, a bank, a pitch and a slip. One object is one
 * workspace: not for use by two threads.
 */
final class TurnBalance {
  /** Half the strips of the standard lattice: two whole wings and a mast are 58 unknowns. */
  private static final LatticeSize FRONT_WING = new LatticeSize(8, 2);

  private static final LatticeSize STABILIZER = new LatticeSize(5, 2);

  private static final double TRIAL = 1e-3;

  final Craft craft;
  final RideCase rideCase;
  final List<ProfileForces> profiles;
  final ThrustLine thrustLine;
  private final TurnLattice lattice;

  TurnBalance(RideCase rideCase) {
    this.rideCase = rideCase;
    craft = new Craft(rideCase, FRONT_WING, STABILIZER);
    Mast mast = rideCase.setup().mast();
    lattice = new TurnLattice(craft.wings(), mast.chord(), mast.rake());
    List<PlacedWing> wings = craft.wings();
    profiles =
        List.of(
            new ProfileForces(wings.get(0), rideCase.setup().frontWing().finish()),
            new ProfileForces(wings.get(1), rideCase.setup().stabilizer().finish()));
    thrustLine = new ThrustLine(craft);
  }

  /** Weight of everything [N]. */
  double weight() {
    return (rideCase.rider().allMass() + craft.partsMass()) * Craft.GRAVITY;
  }

  Speed speed(double speed) {
    return new Speed(speed);
  }

  /** What a speed alone decides. */
  final class Speed {
    final double speed;
    final double pressure;
    final double perMetre;
    final List<StripPolars> polars;

    Speed(double speed) {
      this.speed = speed;
      pressure = 0.5 * rideCase.water().density() * speed * speed;
      perMetre = speed / rideCase.water().kinematicViscosity();
      polars = profiles.stream().map(p -> p.at(perMetre)).toList();
    }
  }

  /** Forces at a pitch and a slip. */
  record State(
      TurnMotion motion,
      TurnForces craft,
      TurnForces water,
      List<TurnWing> wings,
      double resistance,
      double thrust,
      double datumDepth,
      double up,
      double aside) {}

  /**
   * The flow with vortices, wakes and image where a pitch and a slip put them.
   *
   * @return empty where the datum is not under water
   */
  Optional<TurnFlow> flow(double bank, TurnPath path, double[] x) {
    TurnMotion motion = new TurnMotion(x[0], bank, x[1], path.curvature());
    double depth = depth(motion);
    return depth > 0
        ? Optional.of(lattice.solve(motion, OptionalDouble.of(depth)))
        : Optional.empty();
  }

  private double depth(TurnMotion motion) {
    double[] place = new double[3];
    PlacedWing front = craft.wings().get(0);
    motion.place(front.ahead(), 0, -front.above(), place, 0);
    return rideCase.immersion() - place[2];
  }

  /** All forces at a pitch and a slip, in a flow that was solved there or close by. */
  State state(TurnFlow flow, Speed at, double bank, TurnPath path, double[] x) {
    TurnMotion motion = new TurnMotion(x[0], bank, x[1], path.curvature());
    double depth = depth(motion);
    List<TurnWing> wings = flow.loads(motion, at.polars);
    TurnForces sum = new TurnForces();
    for (TurnWing wing : wings) {
      sum.add(wing.force(), wing.moment(), at.pressure);
    }
    Attitude pitch = Attitude.of(x[0]);
    PlaneForce drags = craft.drags(at.speed).at(pitch).plus(moreMast(at, bank, depth));
    sum.addInPlane(drags, bank);
    buoyancy(sum, motion, pitch);
    double air = craft.airDrag(at.speed);
    double resistance = air - sum.force[0];
    double thrust = thrustLine.thrust(pitch, resistance);
    sum.addInPlane(thrustLine.force(pitch, thrust), bank);
    TurnForces water = new TurnForces();
    water.add(sum.force, sum.moment, 1);
    inertia(sum, motion, at.speed, path, craft.partsMass(), parts());
    double mass = rideCase.rider().allMass();
    double pull = mass * Craft.GRAVITY * Math.tan(bank);
    double up = -sum.force[2] - mass * Craft.GRAVITY;
    double aside = sum.force[1] - pull;
    return new State(motion, sum, water, wings, resistance, thrust, depth, up, aside);
  }

  /** A bank wets more of the mast than the upright ride; half way up the added piece. */
  private PlaneForce moreMast(Speed at, double bank, double depth) {
    Mast m = rideCase.setup().mast();
    double more = Math.max(0, Math.min(m.length(), depth / Math.cos(bank)) - depth);
    double area = MastDrag.profile(m.chord(), m.thickness(), more, at.perMetre, m.finish());
    return PlaneForce.at(-at.pressure * area, 0, 0, depth);
  }

  /** Where all parts together have their mass, in foil axes. */
  private double[] parts() {
    Attitude level = Attitude.of(0);
    return new double[] {craft.partsAhead(level), 0, -craft.partsAbove(level)};
  }

  /** Weight, and the pull outwards of a mass on the circle. */
  static void inertia(
      TurnForces sum, TurnMotion motion, double speed, TurnPath path, double mass, double[] foil) {
    double[] place = new double[3];
    motion.place(foil[0], foil[1], foil[2], place, 0);
    double rate = speed * path.curvature();
    double outwards = path.curvature() == 0 ? 0 : rate * rate * (path.radius() - place[1]);
    sum.add(0, -mass * outwards, mass * Craft.GRAVITY, place);
  }

  /** Straight up, through the middle of what is under water. */
  private void buoyancy(TurnForces sum, TurnMotion motion, Attitude pitch) {
    PlaneForce force = craft.buoyancy(pitch);
    PlaneForce tilted = craft.buoyancy(Attitude.of(pitch.angle() + TRIAL));
    double ahead = force.noseUp() / force.up();
    double above = -(tilted.noseUp() / tilted.up() - ahead) / TRIAL;
    double[] place = new double[3];
    // From axes that are pitched already: back by the pitch, then with bank and slip.
    motion.place(
        ahead * pitch.cos() + above * pitch.sin(),
        0,
        -(above * pitch.cos() - ahead * pitch.sin()),
        place,
        0);
    sum.add(0, 0, -force.up(), place);
  }
}
