package trimwright.kernel.hull;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.Roots;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.CraftDrags;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Footing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.surface.LatticeSize;

/**
 * Puts the forces together while the board is on the water. The rider's mass counts where the feet
 * (knees, belly) press; the board's middle lies at its mass centre, as the trim has it. Immutable.
 */
final class WaterBalance {
  /**
   * Drag of a body towed prone over speed squared [kg/m], all of it in the water: K. Narita, M.
   * Nakashima and H. Takagi, J. Biomechanics 54 (2017), 23.5 V^2.0; M. Cortesi and others, J.
   * Sports Science and Medicine 23 (2024), about 25 (both abstracts read). Upright legs drag more
   * for their volume; not counted.
   */
  static final double BODY_DRAG = 25;

  /** How near the depth is found [m]. */
  private static final double DEPTH_TOLERANCE = 1e-8;

  /** Least load on the feet that is divided by, as a share of the weight [1]. */
  private static final double LEAST_LOAD = 0.02;

  /** Half the strips of the standard lattice; a test says how little they change of the lift. */
  private static final LatticeSize FRONT_WING = new LatticeSize(8, 2);

  private static final LatticeSize STABILIZER = new LatticeSize(5, 2);

  private final Craft craft;
  private final BoardHull hull;
  private final DeepWings wings;
  private final Posture posture;
  private final double riderWeight;
  private final double riderMass;
  private final double sternAlong;
  private final double sternAhead;
  private final double sternAbove;
  private final double addedShare;
  private final ThrustLine line;
  private final double mostAcceleration;
  private final Optional<DoubleUnaryOperator> greatestThrust;

  /**
   * A craft on the water.
   *
   * @param c the case
   * @param posture of the rider
   * @param limits whose trims bound the wings' table
   * @param thrust the greatest thrust over speed; empty where the thrust needed is asked for
   */
  WaterBalance(
      RideCase c, Posture posture, TakeOffLimits limits, Optional<DoubleUnaryOperator> thrust) {
    this.posture = posture;
    Board b = c.setup().board();
    hull = new BoardHull(b.length(), b.width(), b.thickness(), b.volume());
    Craft there = new Craft(c);
    Deck deck = there.deck();
    sternAlong = b.massCentreAhead() - b.track() - 0.5 * b.length();
    sternAhead = deck.aheadInFoil(sternAlong, b.thickness());
    sternAbove = deck.aboveInFoil(sternAlong, b.thickness());
    // The wings' depth with the stern touching, half way between the trims.
    Attitude middle = Attitude.of(limits.mostTrim() - deck.baseAngle());
    double datum = sternAbove(middle);
    double immersion =
        datum
            - there.wings().get(0).ahead() * middle.sin()
            - there.wings().get(0).above() * middle.cos();
    craft = new Craft(c.withImmersion(immersion), FRONT_WING, STABILIZER);
    wings =
        new DeepWings(
            craft,
            pitch -> sternAbove(Attitude.of(pitch)),
            limits.leastTrim() - deck.baseAngle(),
            limits.mostTrim() - deck.baseAngle());
    riderMass = c.rider().allMass();
    riderWeight = riderMass * Craft.GRAVITY;
    addedShare = addedMass(hull);
    line = new ThrustLine(craft);
    mostAcceleration = limits.mostAcceleration();
    greatestThrust = thrust;
  }

  private WaterBalance(WaterBalance of, Posture posture) {
    this.posture = posture;
    hull = of.hull;
    sternAlong = of.sternAlong;
    sternAhead = of.sternAhead;
    sternAbove = of.sternAbove;
    craft = of.craft;
    wings = of.wings;
    riderMass = of.riderMass;
    riderWeight = of.riderWeight;
    addedShare = of.addedShare;
    line = of.line;
    mostAcceleration = of.mostAcceleration;
    greatestThrust = of.greatestThrust;
  }

  /** The same craft with the rider in another posture. */
  WaterBalance with(Posture other) {
    return new WaterBalance(this, other);
  }

  /**
   * Water that goes along with a float, over what it displaces: the spheroid of the board's length
   * and volume, deeply under (H. Lamb, Hydrodynamics, 6th ed. 1932, article 114, from memory).
   */
  static double addedMass(BoardHull hull) {
    double diameter = Math.sqrt(6 * hull.volume() / (Math.PI * hull.length()));
    double e2 = 1 - diameter * diameter / (hull.length() * hull.length());
    if (!(e2 > 1e-3)) {
      return 0.5;
    }
    double e = Math.sqrt(e2);
    double alpha = 2 * (1 - e2) / (e2 * e) * (0.5 * Math.log((1 + e) / (1 - e)) - e);
    return alpha / (2 - alpha);
  }

  Craft craft() {
    return craft;
  }

  BoardHull hull() {
    return hull;
  }

  /** The deck's end at the stern ahead of the mast's axis along the deck [m], negative. */
  double sternAlong() {
    return sternAlong;
  }

  private double sternAbove(Attitude at) {
    return sternAhead * at.sin() + sternAbove * at.cos();
  }

  /** Everything at one speed [m/s]. */
  AtSpeed at(double speed) {
    return new AtSpeed(speed);
  }

  /** What a speed alone decides. */
  final class AtSpeed {
    private final double speed;
    private final double pressure;
    private final HullAtSpeed water;
    private final DeepWings.AtSpeed lift;
    private final CraftDrags drags;
    private final double air;
    private final boolean driven = greatestThrust.isPresent();
    private final double greatest;

    private AtSpeed(double speed) {
      this.speed = speed;
      RideCase c = craft.rideCase();
      pressure = 0.5 * c.water().density() * speed * speed;
      water = new HullAtSpeed(hull, c.water(), speed);
      lift = wings.at(speed);
      drags = craft.drags(speed);
      air = craft.airDrag(speed);
      greatest = greatestThrust.map(t -> t.applyAsDouble(speed)).orElse(Double.NaN);
    }

    /** The greatest thrust [N]; NaN where what is needed is asked for. */
    double greatest() {
      return greatest;
    }

    /** Steepest trim that keeps a room to the stall [rad]; empty where the level board does not. */
    OptionalDouble steepest(double stallMargin) {
      OptionalDouble pitch = lift.highest(stallMargin);
      return pitch.isEmpty()
          ? pitch
          : OptionalDouble.of(pitch.getAsDouble() + craft.deck().baseAngle());
    }

    /** With the board on the water as deep as it must, or just out of it. */
    WaterState at(double trim) {
      Attitude at = Attitude.of(trim - craft.deck().baseAngle());
      PlaneForce foil = lift.force(at.angle()).times(pressure);
      WaterState out = at(trim, at, foil, 0);
      if (out.up() >= 0) {
        return out;
      }
      double high = hull.thickness();
      double atHigh = at(trim, at, foil, high).up();
      double low = 0;
      double atLow = out.up();
      double deepest = deepest(trim);
      while (atHigh < 0 && high < deepest) {
        low = high;
        atLow = atHigh;
        high = Math.min(deepest, high + Math.max(hull.thickness(), hull.length() * Math.sin(trim)));
        atHigh = at(trim, at, foil, high).up();
      }
      if (atHigh < 0) {
        return at(trim, at, foil, high);
      }
      double depth =
          Roots.between(d -> at(trim, at, foil, d).up(), low, atLow, high, atHigh, DEPTH_TOLERANCE);
      return at(trim, at, foil, depth);
    }

    private double deepest(double trim) {
      return hull.thickness()
          + hull.length() * Math.sin(trim)
          + posture.all() * craft.rideCase().rider().height();
    }

    /** With the stern so deep. */
    WaterState at(double trim, double sternDepth) {
      Attitude at = Attitude.of(trim - craft.deck().baseAngle());
      return at(trim, at, lift.force(at.angle()).times(pressure), sternDepth);
    }

    private WaterState at(double trim, Attitude at, PlaneForce foil, double sternDepth) {
      HullLoad load = water.at(trim, sternDepth);
      double ahead = sternAhead * at.cos() - sternAbove * at.sin();
      double above = sternAbove(at);
      PlaneForce board = load.force().about(-ahead, -above);
      double datum = sternDepth + above;
      PlaneForce rest = drags.at(at, datum);
      PlaneForce parts = craft.weights(at);
      PlaneForce buoyancy = craft.buoyancy(at, datum);
      Rider rider = craft.rideCase().rider();
      double standing = 0.5 * (rider.frontFoot() + rider.backFoot());
      double deckDepth =
          sternDepth
              - hull.thickness() * Math.cos(trim)
              - (standing - craft.rideCase().setup().board().track() - sternAlong) * Math.sin(trim);
      double submerged = posture.submerged(deckDepth, rider.height());
      double density = craft.rideCase().water().density();
      double body = submerged * rider.mass() / 1000 * density * Craft.GRAVITY;
      double bodyDrag = submerged * BODY_DRAG * speed * speed;
      double drag = air + bodyDrag - foil.forward() - rest.forward() - board.forward();

      double added = addedShare * density * load.displaced();
      double mass = riderMass + craft.partsMass() + added;
      double thrust =
          driven
              ? Math.min(greatest, line.thrust(at, drag + mass * mostAcceleration))
              : line.thrust(at, drag);
      PlaneForce push = line.force(at, thrust);
      double pull = line.pull(thrust);
      double acceleration = driven ? (push.forward() + pull - drag) / mass : 0;
      PlaneForce inertia =
          PlaneForce.at(
                  -craft.partsMass() * acceleration, 0, craft.partsAhead(at), craft.partsAbove(at))
              .plus(PlaneForce.at(-added * acceleration, 0, ahead, above + 0.5 * hull.thickness()));
      double friction = air + bodyDrag - pull + riderMass * acceleration;
      PlaneForce all =
          board.plus(foil).plus(rest).plus(parts).plus(buoyancy).plus(push).plus(inertia);
      Footing footing =
          new Footing(craft.deck(), Math.max(LEAST_LOAD * riderWeight, riderWeight - body));
      return new WaterState(
          speed,
          trim,
          sternDepth,
          datum,
          craft.wettedMast(at, datum),
          load,
          board,
          foil,
          rest,
          parts,
          buoyancy,
          thrust,
          push.forward() + pull,
          push,
          inertia,
          friction,
          body,
          drag,
          mass,
          acceleration,
          footing.pressure(at, all.noseUp(), friction),
          all.up() + body - riderWeight);
    }
  }
}
