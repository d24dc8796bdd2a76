package trimwright.kernel.quick;

import java.util.Optional;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.CraftDrags;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.trim.NoTrimReason;

/**
 * A craft at one speed, to be trimmed from tables.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class QuickSpeed {
  /** How near the pitch is found [rad]. */
  private static final double PITCH_TOLERANCE = 1e-7;

  /** Steps after which the search from one guess gives way to the one between nodes. */
  private static final int MOST_STEPS = 12;

  /** Steps of Newton's on one cubic: each doubles the digits. */
  private static final int CUBIC_STEPS = 4;

  /** Step of pitch for slopes, as in the full solution [rad]. */
  private static final double PITCH_STEP = 1e-3;

  private final QuickCase of;
  private final Craft craft;
  private final double speed;
  private final double dynamicPressure;
  private final CraftDrags drags;
  private final double air;

  QuickSpeed(QuickCase of, double speed) {
    if (!(speed > 0) || !Double.isFinite(speed)) {
      throw new IllegalArgumentException("speed must be above 0 m/s, was " + speed + " m/s");
    }
    this.of = of;
    this.speed = speed;
    craft = of.craft();
    dynamicPressure = 0.5 * craft.rideCase().water().density() * speed * speed;
    drags = craft.drags(speed);
    air = craft.airDrag(speed);
  }

  /**
   * The trim with a pair's loads.
   *
   * @param loads at this speed, of the craft's own wings with any shim
   * @return balance and what speaks against it
   */
  public QuickTrim trim(PairLoads loads) {
    double guess = carrying(loads, of.riderWeight());
    if (guess == Double.POSITIVE_INFINITY) {
      // The rest may carry what the wings alone cannot: asked for where they carry most.
      guess = Math.max(loads.from(), Math.min(loads.to(), loads.stallPitch()));
    } else if (guess == Double.NEGATIVE_INFINITY) {
      guess = loads.from();
    }
    double pitch = settle(loads, guess);
    if (pitch == Double.POSITIVE_INFINITY) {
      return QuickTrim.none(NoTrimReason.TOO_SLOW);
    }
    if (pitch == Double.NEGATIVE_INFINITY) {
      return QuickTrim.none(NoTrimReason.STALLED);
    }
    QuickBalance balance = balance(loads, pitch);
    return new QuickTrim(against(loads, balance), Optional.of(balance));
  }

  /**
   * What the wings carry at their first stall beyond what they must: below nothing the craft does
   * not fly at this speed.
   *
   * @param loads at this speed
   * @return vertical force [N]
   */
  public double surplusAtStall(PairLoads loads) {
    return miss(loads, Math.max(loads.from(), Math.min(loads.to(), loads.stallPitch())));
  }

  /**
   * The speed at which the wings would just carry the weight at their first stall if their loads
   * over dynamic pressure stayed as they are at this one.
   *
   * @param loads at this speed
   * @return [m/s]; infinite where they carry nothing
   */
  public double stallSpeed(PairLoads loads) {
    double lift = dynamicPressure * loads.up(Math.min(loads.to(), loads.stallPitch()));
    double needed = lift - surplusAtStall(loads);
    return lift > 0 && needed > 0 ? speed * Math.sqrt(needed / lift) : Double.POSITIVE_INFINITY;
  }

  /**
   * The foil's own static margin, without the deck's lever; see {@link
   * trimwright.kernel.trim.TrimPoint#staticMargin} less its {@code deckLeverShare}.
   *
   * @param loads at this speed
   * @param balance found with them
   * @return [m]
   */
  public double foilMargin(PairLoads loads, QuickBalance balance) {
    Deck deck = craft.deck();
    double riderMass = craft.rideCase().rider().allMass();
    double mass = riderMass + craft.partsMass();
    Attitude here = Attitude.of(balance.pitch());
    double s = balance.footPressure();
    double deckPitch = balance.pitch() + deck.baseAngle();
    double footAhead = deck.footingAhead(balance.pitch()) + s * Math.cos(deckPitch);
    double footAbove = deck.footingAbove(balance.pitch()) + s * Math.sin(deckPitch);
    double ahead = (riderMass * footAhead + craft.partsMass() * craft.partsAhead(here)) / mass;
    double above = (riderMass * footAbove + craft.partsMass() * craft.partsAbove(here)) / mass;
    PlaneForce low = allAt(loads, balance, -PITCH_STEP).about(ahead, above);
    PlaneForce high = allAt(loads, balance, PITCH_STEP).about(ahead, above);
    double liftSlope = (high.up() - low.up()) / (2 * PITCH_STEP);
    double momentSlope = (high.noseUp() - low.noseUp()) / (2 * PITCH_STEP);
    return (of.riderWeight() * footAbove - momentSlope) / liftSlope;
  }

  /** All forces, those of the feet too, a little off a balance: thrust and feet stay. */
  private PlaneForce allAt(PairLoads loads, QuickBalance balance, double turned) {
    double pitch = balance.pitch() + turned;
    Attitude at = Attitude.of(pitch);
    Deck deck = craft.deck();
    double s = balance.footPressure();
    double deckPitch = pitch + deck.baseAngle();
    double footAhead = deck.footingAhead(pitch) + s * Math.cos(deckPitch);
    double footAbove = deck.footingAbove(pitch) + s * Math.sin(deckPitch);
    double friction = air - of.thrustLine().pull(balance.thrust());
    return new PlaneForce(
            dynamicPressure * loads.forward(pitch),
            dynamicPressure * loads.up(pitch),
            dynamicPressure * loads.noseUp(pitch))
        .plus(drags.at(at))
        .plus(craft.weights(at))
        .plus(craft.buoyancy(at))
        .plus(of.thrustLine().force(at, balance.thrust()))
        .plus(PlaneForce.at(-friction, -of.riderWeight(), footAhead, footAbove));
  }

  /** Pitch at which the wings carry what the rest does not, from a guess. */
  private double settle(PairLoads loads, double guess) {
    double before = guess;
    double missBefore = miss(loads, before);
    double pitch = carrying(loads, dynamicPressure * loads.up(before) - missBefore);
    for (int i = 0; i < MOST_STEPS && Double.isFinite(pitch); i++) {
      if (Math.abs(pitch - before) < PITCH_TOLERANCE) {
        return pitch;
      }
      double miss = miss(loads, pitch);
      double slope = (miss - missBefore) / (pitch - before);
      before = pitch;
      missBefore = miss;
      // Along the chord of the whole balance; where that does not rise, by the wings' lift alone.
      double next = pitch - miss / slope;
      pitch =
          slope > 0 && next > loads.from() && next < loads.to()
              ? next
              : carrying(loads, dynamicPressure * loads.up(pitch) - miss);
    }
    return pitch;
  }

  /**
   * The lowest pitch at which both wings carry a force [N]: infinite where they never do, minus
   * infinite where they always carry more.
   */
  private double carrying(PairLoads loads, double force) {
    double wanted = force / dynamicPressure;
    if (loads.upAt(0) > wanted) {
      return Double.NEGATIVE_INFINITY;
    }
    int count = loads.nodes().count();
    int i = 1;
    while (i < count && loads.upAt(i) < wanted) {
      i++;
    }
    if (i == count) {
      return Double.POSITIVE_INFINITY;
    }
    double low = loads.nodes().pitch(i - 1);
    double high = loads.nodes().pitch(i);
    PitchNodes.Cubic up = loads.upIn(i - 1);
    double atLow = loads.upAt(i - 1);
    double pitch = low + (high - low) * (wanted - atLow) / (loads.upAt(i) - atLow);
    for (int step = 0; step < CUBIC_STEPS; step++) {
      double next = pitch - (up.value(pitch) - wanted) / up.slope(pitch);
      if (!(next >= low && next <= high)) {
        return pitch;
      }
      if (Math.abs(next - pitch) < PITCH_TOLERANCE) {
        return next;
      }
      pitch = next;
    }
    return pitch;
  }

  /** All vertical forces at a pitch, thrust balancing the drag [N]. */
  private double miss(PairLoads loads, double pitch) {
    Attitude at = Attitude.of(pitch);
    double resistance = air - dynamicPressure * loads.forward(pitch) - drags.at(at).forward();
    double thrust = of.thrustLine().thrust(at, resistance);
    return dynamicPressure * loads.up(pitch)
        + craft.weights(at).up()
        + craft.buoyancy(at).up()
        + of.thrustLine().force(at, thrust).up()
        - of.riderWeight();
  }

  private QuickBalance balance(PairLoads loads, double pitch) {
    Attitude at = Attitude.of(pitch);
    PlaneForce water = drags.at(at);
    double resistance = air - dynamicPressure * loads.forward(pitch) - water.forward();
    double thrust = of.thrustLine().thrust(at, resistance);
    double moment =
        dynamicPressure * loads.noseUp(pitch)
            + water.noseUp()
            + craft.weights(at).noseUp()
            + craft.buoyancy(at).noseUp()
            + of.thrustLine().force(at, thrust).noseUp();
    double friction = air - of.thrustLine().pull(thrust);
    double footPressure = of.footing().pressure(at, moment, friction);
    double perTrack =
        Craft.GRAVITY
            * craft.massOnDeck()
            * Math.cos(pitch + craft.deck().baseAngle())
            / of.footing().lever(at, friction);
    Optional<Powertrain> drive = of.powertrain();
    double power = drive.isPresent() ? drive.get().electricPower(thrust, speed) : 0;
    return new QuickBalance(
        pitch,
        thrust,
        power,
        footPressure,
        perTrack,
        of.footShare(footPressure, 0),
        loads.stallPitch() - pitch);
  }

  private Optional<NoTrimReason> against(PairLoads loads, QuickBalance b) {
    if (b.stallMargin() < 0 || b.pitch() < loads.lowestPitch()) {
      return Optional.of(NoTrimReason.STALLED);
    }
    Optional<Powertrain> drive = of.powertrain();
    if (drive.isPresent() && !drive.get().gives(b.thrust(), speed)) {
      return Optional.of(NoTrimReason.THRUST_SHORT);
    }
    if (b.footShare() < 0 || b.footShare() > 1) {
      return Optional.of(NoTrimReason.FEET_CANNOT_REACH);
    }
    return Optional.empty();
  }
}
