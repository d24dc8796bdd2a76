package trimwright.kernel.turn;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.surface.ProfileForces;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.surface.TurnWing;
import trimwright.kernel.water.Cavitation;

/** What a balanced turn means: feet, depths, margins, loads. */
final class TurnReading {
  private final Craft craft;
  private final RideCase rideCase;
  private final List<ProfileForces> profiles;
  private final ThrustLine thrustLine;
  private final Optional<Powertrain> powertrain;

  TurnReading(TurnBalance balance) {
    craft = balance.craft;
    rideCase = balance.rideCase;
    profiles = balance.profiles;
    thrustLine = balance.thrustLine;
    powertrain = Propulsion.find(rideCase);
  }

  TurnPoint point(TurnBalance.Speed at, double bank, TurnPath path, TurnBalance.State state) {
    Rider rider = rideCase.rider();
    double mass = rider.allMass();
    double air = craft.airDrag(at.speed);
    double pulled = thrustLine.pull(state.thrust());
    double[] pull = {pulled - air, -mass * Craft.GRAVITY * Math.tan(bank), mass * Craft.GRAVITY};
    // The feet press at one point of the deck: linear in where it is.
    double[] none = feet(state, pull, 0, 0, bank);
    double[] ahead = feet(state, pull, 1, 0, bank);
    double[] inside = feet(state, pull, 0, 1, bank);
    double a = ahead[0] - none[0];
    double b = inside[0] - none[0];
    double c = ahead[1] - none[1];
    double d = inside[1] - none[1];
    double p = -(state.craft().moment[0] + none[0]);
    double q = -(state.craft().noseUp(bank) + none[1]);
    double det = a * d - b * c;
    double s = (p * d - b * q) / det;
    double t = (a * q - p * c) / det;
    TurnForces all = new TurnForces();
    all.add(state.craft().force, state.craft().moment, 1);
    all.add(pull[0], pull[1], pull[2], deckPoint(state.motion(), s, t));
    double share = (s - (rider.backFoot() - track())) / rider.stance();
    TurnWing mast = state.wings().get(2);
    double tip = Double.POSITIVE_INFINITY;
    double margin = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 2; i++) {
      tip = Math.min(tip, TurnTips.depth(craft.wings().get(i), state.motion(), state.datumDepth()));
      margin = Math.min(margin, state.wings().get(i).stallMargin());
    }
    OptionalDouble power =
        powertrain.isPresent()
            ? OptionalDouble.of(powertrain.get().electricPower(state.thrust(), at.speed))
            : OptionalDouble.empty();
    return new TurnPoint(
        at.speed,
        bank,
        path.radius(),
        path.riderRadius(),
        1 / Math.cos(bank),
        state.motion().pitch() + craft.deck().baseAngle(),
        state.motion().heading(),
        state.thrust(),
        state.resistance(),
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
        Math.hypot(state.up(), state.aside()));
  }

  /** How much faster at unchanged angles until the lowest pressure is the vapour's. */
  private double cavitation(TurnBalance.Speed at, TurnBalance.State state, double tipDepth) {
    double lowest = 0;
    for (int i = 0; i < 2; i++) {
      double[] lift = state.wings().get(i).stripLift();
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

  private TurnLoads loads(TurnBalance.Speed at, TurnPath path, TurnBalance.State state) {
    double[] mast = LoadSums.mast(state.water(), craft, state.motion(), at.speed, path);
    return new TurnLoads(
        Math.abs(mast[0]),
        mast[1],
        LoadSums.root(state.wings().get(0), at.pressure),
        LoadSums.root(state.wings().get(1), at.pressure));
  }

  private double track() {
    return rideCase.setup().board().track();
  }

  /** Roll and nose-up moment of the feet's force at a point of the deck. */
  private double[] feet(TurnBalance.State state, double[] pull, double s, double t, double bank) {
    TurnForces f = new TurnForces();
    f.add(pull[0], pull[1], pull[2], deckPoint(state.motion(), s, t));
    return new double[] {f.moment[0], f.noseUp(bank)};
  }

  private double[] deckPoint(TurnMotion motion, double s, double t) {
    Deck deck = craft.deck();
    double[] place = new double[3];
    motion.place(deck.aheadInFoil(s, 0), t, -deck.aboveInFoil(s, 0), place, 0);
    return place;
  }
}
