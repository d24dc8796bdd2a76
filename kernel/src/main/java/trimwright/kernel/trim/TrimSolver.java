package trimwright.kernel.trim;

import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.numeric.Roots;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.surface.SpeedLoads;

/**
 * Trim at one speed: the pitch at which the vertical forces vanish, and all that is said about it.
 */
final class TrimSolver {
  /** Width of the last bracket of pitch [rad]: 1e-9 degrees. */
  private static final double PITCH_TOLERANCE = 2e-11;

  /** Step of pitch for slopes [rad]. */
  private static final double PITCH_STEP = 1e-3;

  /** Step of speed for slopes, as a share [1]. */
  private static final double SPEED_STEP = 2e-3;

  /** Over one such step of speed the pitch changes by less than this, mostly [rad]. */
  private static final double NEAR_PITCH = 2e-3;

  /** Step of the search for lift beyond the first stall [rad]. */
  private static final double STALL_STEP = Math.toRadians(0.5);

  /** A static margin nearer to neutral than this gives no pitch per shift of weight [m]. */
  private static final double NEUTRAL = 5e-3;

  private final BalanceModel model;
  private final LimitCheck limits;
  private final Optional<Powertrain> powertrain;

  SpeedLoads loads(double speed) {
    return model.loads(speed);
  }

  TrimSolver(BalanceModel model, RideLimits limits) {
    this.model = model;
    this.limits = new LimitCheck(model, limits);
    powertrain = Propulsion.find(model.craft().rideCase());
  }

  /** What a speed gives, before anything is said about it. */
  record Found(Optional<Balance> balance, Optional<NoTrimReason> reason, boolean pastStall) {
    Found(Optional<Balance> balance, Optional<NoTrimReason> reason) {
      this(balance, reason, false);
    }

    /** Whether forces balance before the first stall: there lift grows with pitch and speed. */
    boolean stands() {
      return balance.isPresent() && !pastStall;
    }

    boolean trimmed() {
      return reason.isEmpty();
    }
  }

  /** The balance at a speed, and what speaks against it. */
  Found find(double speed) {
    SpeedModel here = model.at(speed);
    double low = here.loads().from();
    double end = here.loads().to();
    double atLow = here.at(low).up();
    if (atLow > 0) {
      // More than the weight is carried at the lowest pitch computed, which lies a little below no
      // lift of both wings together: they would have to press down.
      return new Found(Optional.empty(), Optional.of(NoTrimReason.STALLED));
    }
    // Up to the first stall lift grows with pitch; beyond, the wing as a whole may still gain some.
    double high = Math.max(low + NEAR_PITCH, Math.min(here.stall(), end));
    double atHigh = here.at(high).up();
    boolean pastStall = false;
    while (atHigh < 0 && high < end) {
      pastStall = true;
      low = high;
      atLow = atHigh;
      high = Math.min(high + STALL_STEP, end);
      atHigh = here.at(high).up();
    }
    if (atHigh < 0) {
      return new Found(Optional.empty(), Optional.of(NoTrimReason.TOO_SLOW));
    }
    Balance balance = here.at(root(here, low, atLow, high, atHigh));
    return new Found(Optional.of(balance), against(balance), pastStall);
  }

  /**
   * The balance at a speed or, where there is none, what is nearest to it: all that the wings carry
   * before they stall.
   */
  Balance nearest(double speed) {
    return find(speed)
        .balance()
        .orElseGet(
            () -> {
              SpeedModel here = model.at(speed);
              return here.at(Math.min(here.stall(), here.loads().to()));
            });
  }

  /** The pitch at which the vertical forces vanish, between two at which they do not. */
  private static double root(
      SpeedModel here, double low, double atLow, double high, double atHigh) {
    return Roots.between(p -> here.at(p).up(), low, atLow, high, atHigh, PITCH_TOLERANCE);
  }

  private Optional<NoTrimReason> against(Balance b) {
    if (stallReserve(b) < 0) {
      return Optional.of(NoTrimReason.STALLED);
    }
    if (powertrain.isPresent() && !powertrain.get().gives(b.thrust(), b.speed())) {
      return Optional.of(NoTrimReason.THRUST_SHORT);
    }
    double share = footShare(b);
    if (share < 0 || share > 1) {
      return Optional.of(NoTrimReason.FEET_CANNOT_REACH);
    }
    return Optional.empty();
  }

  double footShare(Balance b) {
    Rider r = model.craft().rideCase().rider();
    double back = r.backFoot() - model.craft().rideCase().setup().board().track();
    return (b.footPressure() - back) / r.stance();
  }

  double deckPitch(Balance b) {
    return b.pitch() + model.craft().deck().baseAngle();
  }

  /** The whole answer at a speed. */
  TrimOutcome solve(double speed) {
    Found found = find(speed);
    if (found.trimmed()) {
      return new TrimOutcome.Trimmed(point(found.balance().get()));
    }
    NoTrimReason reason = found.reason().get();
    boolean stands =
        reason == NoTrimReason.THRUST_SHORT || reason == NoTrimReason.FEET_CANNOT_REACH;
    // A stall without a balance: nothing lets go, too much is carried.
    Optional<TrimOutcome.Excess> excess =
        reason == NoTrimReason.STALLED && found.balance().isEmpty()
            ? Optional.of(excess(speed))
            : Optional.empty();
    return new TrimOutcome.NoTrim(
        speed, reason, stands ? found.balance().map(this::point) : Optional.empty(), excess);
  }

  private TrimOutcome.Excess excess(double speed) {
    Balance lowest = model.at(model.response().from(), speed);
    return lowest.frontWing().up() + lowest.stabilizer().up() > 0
        ? TrimOutcome.Excess.WINGS
        : TrimOutcome.Excess.REST;
  }

  /** All that is said about a balance. */
  TrimPoint point(Balance b) {
    RideCase c = model.craft().rideCase();
    Rider r = c.rider();
    double share = footShare(b);
    double q = b.at().dynamicPressure();
    Stability s = stability(b);
    MomentTerms terms = model.terms(b, b.footPressure());
    PlaneForce foil = b.withoutFeet();
    double forwardSum = foil.forward() - b.air() + b.pull();
    double lean =
        (b.air() * r.airDragHeight() - b.pull() * c.pullAboveDeck().orElse(0)) / b.riderWeight();
    double stallMargin = stallMargin(b);
    return new TrimPoint(
        b.speed(),
        deckPitch(b),
        b.pitch() + c.setup().frontWing().setting(),
        share,
        b.footPressure(),
        b.footPressure() + lean,
        share * r.allMass(),
        (1 - share) * r.allMass(),
        (1 - share) * r.stance(),
        b.thrust(),
        b.resistance(),
        power(b),
        b.frontWing().up(),
        b.stabilizer().up(),
        b.frontWing().up() / (q * c.setup().frontWing().shape().area()),
        model.reynoldsPerMetre(b.speed()) * c.setup().frontWing().shape().meanChord(),
        stallMargin,
        s.margin,
        s.deckLever,
        footShareGrowth(b, share),
        s.pitchPerShift,
        Math.hypot(b.up(), forwardSum),
        terms.sum(),
        b.at().loads().residual(b.pitch()),
        terms,
        limits.broken(b, share, stallMargin, s.foil));
  }

  /** How far the strip nearest to its stall, either way, is from it; negative past it [1]. */
  private static double stallReserve(Balance b) {
    double least = 1;
    for (int wing = 0; wing < 2; wing++) {
      double[] angles = b.at().loads().angles(wing, b.pitch());
      least = Math.min(least, b.at().loads().stall().get(wing).reserve(angles));
    }
    return least;
  }

  private double stallMargin(Balance b) {
    return b.at().stall() - b.pitch();
  }

  private double footShareGrowth(Balance b, double here) {
    double step = SPEED_STEP * b.speed();
    Optional<Balance> slower = near(b, b.speed() - step);
    Optional<Balance> faster = near(b, b.speed() + step);
    if (slower.isPresent() && faster.isPresent()) {
      return (footShare(faster.get()) - footShare(slower.get())) / (2 * step);
    }
    if (faster.isPresent()) {
      return (footShare(faster.get()) - here) / step;
    }
    return slower.map(s -> (here - footShare(s)) / step).orElse(0.0);
  }

  /** The balance at a speed next to that of another balance, looked for next to its pitch first. */
  private Optional<Balance> near(Balance b, double speed) {
    double low = b.pitch() - NEAR_PITCH;
    double high = b.pitch() + NEAR_PITCH;
    SpeedModel here = model.at(speed);
    if (low > here.loads().from() && high < here.loads().to()) {
      double atLow = here.at(low).up();
      double atHigh = here.at(high).up();
      if (atLow <= 0 && atHigh >= 0) {
        return Optional.of(here.at(root(here, low, atLow, high, atHigh)));
      }
    }
    return find(speed).balance();
  }

  private record Stability(
      double margin, double foil, double deckLever, OptionalDouble pitchPerShift) {}

  /**
   * Moments about the mass centre of everything, the rider's mass counted where the feet press;
   * speed, thrust, immersion and the place on the deck stay.
   */
  private Stability stability(Balance b) {
    Craft craft = model.craft();
    Deck deck = craft.deck();
    double s = b.footPressure();
    double riderMass = craft.rideCase().rider().allMass();
    double mass = riderMass + craft.partsMass();
    double deckPitch = b.pitch() + deck.baseAngle();
    Attitude at = Attitude.of(b.pitch());
    double footAhead = deck.footingAhead(b.pitch()) + s * Math.cos(deckPitch);
    double footAbove = deck.footingAbove(b.pitch()) + s * Math.sin(deckPitch);
    double ahead = (riderMass * footAhead + craft.partsMass() * craft.partsAhead(at)) / mass;
    double above = (riderMass * footAbove + craft.partsMass() * craft.partsAbove(at)) / mass;
    double[] up = new double[2];
    double[] moment = new double[2];
    for (int side = 0; side < 2; side++) {
      double pitch = b.pitch() + (side == 0 ? -PITCH_STEP : PITCH_STEP);
      Balance turned = b.at().at(pitch, b.thrust());
      PlaneForce foil = turned.withoutFeet();
      PlaneForce all =
          new PlaneForce(
              foil.forward() - turned.air() + turned.pull(),
              turned.up(),
              foil.noseUp() + model.feetMoment(turned, s));
      up[side] = all.up();
      moment[side] = all.about(ahead, above).noseUp();
    }
    double liftSlope = (up[1] - up[0]) / (2 * PITCH_STEP);
    double momentSlope = (moment[1] - moment[0]) / (2 * PITCH_STEP);
    double margin = -momentSlope / liftSlope;
    // The rider's weight moves aft as the deck turns: its moment grows by W times the height of the
    // feet.
    double lever = -b.riderWeight() * footAbove / liftSlope;
    OptionalDouble perShift =
        Math.abs(margin) > NEUTRAL
            ? OptionalDouble.of(b.riderWeight() * Math.cos(deckPitch) / momentSlope)
            : OptionalDouble.empty();
    return new Stability(margin, margin - lever, lever, perShift);
  }

  /** Whether a balance is a trim point inside every limit of the rideable window. */
  boolean rideable(Balance b) {
    return against(b).isEmpty()
        && limits.broken(b, footShare(b), stallMargin(b), stability(b).foil).isEmpty();
  }

  /**
   * How far inside everything that a rideable speed asks for a balance lies: the least over what
   * keeps it from being a trim point and over all limits, each over a size of its own. Negative
   * outside, continuous over speed [1].
   */
  double slack(Balance b) {
    double least = limits.slack(b, footShare(b), stallMargin(b), stability(b).foil);
    least = Math.min(least, stallReserve(b));
    return powertrain.isPresent()
        ? Math.min(least, powertrain.get().slack(b.thrust(), b.speed()))
        : least;
  }

  /** Electric power of a balance [W], where there is a drive. */
  OptionalDouble power(Balance b) {
    return powertrain.isPresent()
        ? OptionalDouble.of(powertrain.get().electricPower(b.thrust(), b.speed()))
        : OptionalDouble.empty();
  }

  /** The drive, where there is one. */
  Optional<Powertrain> powertrain() {
    return powertrain;
  }
}
