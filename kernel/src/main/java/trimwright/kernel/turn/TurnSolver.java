package trimwright.kernel.turn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.MastDrag;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.ProfileForces;
import trimwright.kernel.surface.StripPolars;
import trimwright.kernel.surface.TurnLattice;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.surface.TurnWing;
import trimwright.kernel.water.Cavitation;

/**
 * Solves turns of one case. At a speed and a bank the circle follows from the rider's balance
 * ({@link TurnPath}); pitch and slip make the forces up and to the side vanish; thrust, the place
 * of the feet and their twist follow from drag and moments in closed form.
 *
 * <p>Left out: induced drag from the wake far behind (the drag is that at the vortices, some 3 to 5
 * % of the induced part apart on swept wings), surface waves, the stabilizer in the front wing's
 * slow water, the lean of drags and thrust against the path by the slip.
 *
 * <p>One object is one workspace: not for use by two threads.
 */
public final class TurnSolver {
  /** Half the strips of the standard lattice: two whole wings and a mast are 58 unknowns. */
  private static final LatticeSize FRONT_WING = new LatticeSize(8, 2);

  private static final LatticeSize STABILIZER = new LatticeSize(5, 2);

  /** Height of a standing mass centre over the stature: see the reference checks (i-com). */
  private static final double MASS_CENTRE = 0.56;

  private static final int MOST_STEPS = 12;

  /** Share of the weight that may be left over [1]. */
  private static final double AGREED = 1e-6;

  private static final double TRIAL = 1e-3;

  private final Craft craft;
  private final RideCase rideCase;
  private final TurnLattice lattice;
  private final List<ProfileForces> profiles;
  private final ThrustLine thrustLine;
  private final Optional<Powertrain> powertrain;

  /**
   * A solver.
   *
   * @param rideCase the case
   */
  public TurnSolver(RideCase rideCase) {
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
    powertrain = Propulsion.find(rideCase);
  }

  /**
   * The turn with a bank.
   *
   * @param speed of the foil through the water [m/s], above 0
   * @param bank from 0 to 1.2 [rad]
   * @param pitch of the fuselage to begin with, that of the straight ride [rad]
   * @return the turn; none where the speed is too low for the bank, a tip's whole chord would leave
   *     the water, or no pitch carries the load
   */
  public Optional<TurnPoint> at(double speed, double bank, double pitch) {
    Rider rider = rideCase.rider();
    Optional<TurnPath> path = path(speed, bank);
    if (path.isEmpty()) {
      return Optional.empty();
    }
    Speed at = new Speed(speed);
    double weight = (rider.allMass() + craft.partsMass()) * Craft.GRAVITY;
    double[] x = {pitch, 0};
    State now = state(at, bank, path.get(), x);
    double[][] slopes = new double[2][2];
    for (int i = 0; i < 2; i++) {
      double[] moved = x.clone();
      moved[i] += TRIAL;
      State there = state(at, bank, path.get(), moved);
      slopes[0][i] = (there.up - now.up) / TRIAL;
      slopes[1][i] = (there.aside - now.aside) / TRIAL;
    }
    for (int step = 0; step < MOST_STEPS; step++) {
      if (Math.hypot(now.up, now.aside) < AGREED * weight) {
        return wet(now) ? Optional.of(point(at, bank, path.get(), now)) : Optional.empty();
      }
      double det = slopes[0][0] * slopes[1][1] - slopes[0][1] * slopes[1][0];
      double dp = -(now.up * slopes[1][1] - now.aside * slopes[0][1]) / det;
      double ds = -(now.aside * slopes[0][0] - now.up * slopes[1][0]) / det;
      double most = Math.max(Math.abs(dp), Math.abs(ds));
      double scale = most > 0.15 ? 0.15 / most : 1;
      dp *= scale;
      ds *= scale;
      x[0] += dp;
      x[1] += ds;
      if (!(Math.abs(x[0]) < 0.6) || !(Math.abs(x[1]) < 0.6)) {
        return Optional.empty();
      }
      State next = state(at, bank, path.get(), x);
      if (!wet(next)) {
        return Optional.empty();
      }
      // C. G. Broyden 1965: the slopes learn from the step just made.
      double length = dp * dp + ds * ds;
      double missUp = next.up - now.up - slopes[0][0] * dp - slopes[0][1] * ds;
      double missAside = next.aside - now.aside - slopes[1][0] * dp - slopes[1][1] * ds;
      slopes[0][0] += missUp * dp / length;
      slopes[0][1] += missUp * ds / length;
      slopes[1][0] += missAside * dp / length;
      slopes[1][1] += missAside * ds / length;
      now = next;
    }
    return Optional.empty();
  }

  /**
   * Whether there is a circle on which the rider stands square at a bank.
   *
   * @param speed of the foil through the water [m/s], above 0
   * @param bank from 0 to 1.2 [rad]
   * @return false where the speed is too low for the bank
   */
  public boolean hasCircle(double speed, double bank) {
    return path(speed, bank).isPresent();
  }

  private Optional<TurnPath> path(double speed, double bank) {
    double height = craft.deck().height() + MASS_CENTRE * rideCase.rider().height();
    return TurnPath.of(speed, bank, height);
  }

  /** What a speed alone decides. */
  private final class Speed {
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
  private record State(
      TurnMotion motion,
      TurnForces craft,
      TurnForces water,
      List<TurnWing> wings,
      double resistance,
      double thrust,
      double datumDepth,
      double up,
      double aside) {}

  private static boolean wet(State state) {
    return state.datumDepth > 0;
  }

  private State state(Speed at, double bank, TurnPath path, double[] x) {
    TurnMotion motion = new TurnMotion(x[0], bank, x[1], path.curvature());
    double[] place = new double[3];
    PlacedWing front = craft.wings().get(0);
    motion.place(front.ahead(), 0, -front.above(), place, 0);
    double depth = rideCase.immersion() - place[2];
    lattice.solve(motion, OptionalDouble.of(depth));
    List<TurnWing> wings = lattice.loads(at.polars);
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

  private TurnPoint point(Speed at, double bank, TurnPath path, State state) {
    Rider rider = rideCase.rider();
    double mass = rider.allMass();
    double air = craft.airDrag(at.speed);
    double pulled = thrustLine.pull(state.thrust);
    double[] pull = {pulled - air, -mass * Craft.GRAVITY * Math.tan(bank), mass * Craft.GRAVITY};
    // The feet press at one point of the deck: linear in where it is.
    double[] none = feet(state, pull, 0, 0, bank);
    double[] ahead = feet(state, pull, 1, 0, bank);
    double[] inside = feet(state, pull, 0, 1, bank);
    double a = ahead[0] - none[0];
    double b = inside[0] - none[0];
    double c = ahead[1] - none[1];
    double d = inside[1] - none[1];
    double p = -(state.craft.moment[0] + none[0]);
    double q = -(state.craft.noseUp(bank) + none[1]);
    double det = a * d - b * c;
    double s = (p * d - b * q) / det;
    double t = (a * q - p * c) / det;
    TurnForces all = new TurnForces();
    all.add(state.craft.force, state.craft.moment, 1);
    all.add(pull[0], pull[1], pull[2], deckPoint(state.motion, s, t));
    double share = (s - (rider.backFoot() - track())) / rider.stance();
    TurnWing mast = state.wings.get(2);
    double tip = Double.POSITIVE_INFINITY;
    double margin = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 2; i++) {
      tip = Math.min(tip, TurnTips.depth(craft.wings().get(i), state.motion, state.datumDepth));
      margin = Math.min(margin, state.wings.get(i).stallMargin());
    }
    OptionalDouble power =
        powertrain.isPresent()
            ? OptionalDouble.of(powertrain.get().electricPower(state.thrust, at.speed))
            : OptionalDouble.empty();
    return new TurnPoint(
        at.speed,
        bank,
        path.radius(),
        path.riderRadius(),
        1 / Math.cos(bank),
        state.motion.pitch() + craft.deck().baseAngle(),
        state.motion.heading(),
        state.thrust,
        state.resistance,
        power,
        share,
        s,
        t,
        -all.noseIn(bank),
        at.pressure * mast.force()[1],
        tip,
        margin,
        cavitation(at, state, tip),
        loads(at, path, state),
        Math.hypot(state.up, state.aside));
  }

  /** How much faster at unchanged angles until the lowest pressure is the vapour's. */
  private double cavitation(Speed at, State state, double tipDepth) {
    double lowest = 0;
    for (int i = 0; i < 2; i++) {
      double[] lift = state.wings.get(i).stripLift();
      int half = lift.length / 2;
      double[] port = new double[half];
      double[] starboard = new double[half];
      for (int k = 0; k < half; k++) {
        port[k] = lift[half - 1 - k];
        starboard[k] = lift[half + k];
      }
      lowest = Math.min(lowest, profiles.get(i).minimumPressure(port));
      lowest = Math.min(lowest, profiles.get(i).minimumPressure(starboard));
    }
    double above =
        Cavitation.pressureAboveVapour(rideCase.water(), Math.max(0, tipDepth), Craft.GRAVITY);
    return Math.sqrt(above / (at.pressure * -lowest));
  }

  private TurnLoads loads(Speed at, TurnPath path, State state) {
    double[] mast = LoadSums.mast(state.water, craft, state.motion, at.speed, path);
    return new TurnLoads(
        Math.abs(mast[0]),
        mast[1],
        LoadSums.root(state.wings.get(0), at.pressure),
        LoadSums.root(state.wings.get(1), at.pressure));
  }

  private double track() {
    return rideCase.setup().board().track();
  }

  /** Roll and nose-up moment of the feet's force at a point of the deck. */
  private double[] feet(State state, double[] pull, double s, double t, double bank) {
    TurnForces f = new TurnForces();
    f.add(pull[0], pull[1], pull[2], deckPoint(state.motion, s, t));
    return new double[] {f.moment[0], f.noseUp(bank)};
  }

  private double[] deckPoint(TurnMotion motion, double s, double t) {
    Deck deck = craft.deck();
    double[] place = new double[3];
    motion.place(deck.aheadInFoil(s, 0), t, -deck.aboveInFoil(s, 0), place, 0);
    return place;
  }
}
