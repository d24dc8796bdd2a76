package trimwright.kernel.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.numeric.Evolution;
import trimwright.kernel.rig.Rider;

/** Follows a motion over time from a trim. */
final class MotionRun {
  /** Longest step of the integration [s]: a tenth of the quickest thing a rider does. */
  private static final double LONGEST_STEP = 0.03;

  /** Beyond these nothing is known [rad, m/s]. Chosen. */
  private static final double STEEPEST = Math.toRadians(35);

  private static final double SLOWEST = 1;

  /** A body further from its feet than this share of the stature has fallen. Chosen. */
  private static final double FALLEN = 0.3;

  /** Least load on the deck as a share of the weight: below it the feet leave the board. Chosen. */
  private static final double LEAST_LOAD = 0.05;

  private final MotionModel model;
  private final MotionTrim trim;
  private final Controls controls;
  private final WaterMotion water;
  private final CraftMotion motion;
  private final MotionShape shape;
  private final boolean free;
  private final int states;
  private final double[] plain;
  private final double[] plainRates;

  MotionRun(
      MotionModel model, MotionTrim trim, Controls controls, WaterMotion water, boolean free) {
    this.model = model;
    this.trim = trim;
    this.controls = controls;
    this.water = water;
    this.free = free;
    motion = new CraftMotion(model, trim, controls, water, free);
    shape = model.shape();
    states = motion.states();
    plain = new double[states];
    plainRates = new double[states];
  }

  /**
   * Follows it.
   *
   * @param duration [s]
   * @param step between moments [s]
   * @param ends what ends it; {@link MotionEnd#LIMIT_OF_MODEL} always does
   */
  MotionTrace follow(double duration, double step, Set<MotionEnd> ends) {
    List<Evolution.Event> events = new ArrayList<>();
    List<MotionEnd> names = new ArrayList<>();
    for (MotionEnd end : MotionEnd.values()) {
      if (end != MotionEnd.RAN_OUT && (ends.contains(end) || end == MotionEnd.LIMIT_OF_MODEL)) {
        events.add((time, state) -> room(end, time, state));
        names.add(end);
      }
    }
    List<MotionMoment> moments = new ArrayList<>();
    double[] start = java.util.Arrays.copyOf(motion.start(), states + 1);
    Evolution.End end =
        Evolution.follow(
            this::rates,
            start,
            duration,
            step,
            LONGEST_STEP,
            events,
            (time, state) -> moments.add(moment(time, state)));
    MotionEnd why =
        switch (end.event()) {
          case Evolution.LOST -> MotionEnd.LIMIT_OF_MODEL;
          case -1 -> MotionEnd.RAN_OUT;
          default -> names.get(end.event());
        };
    return new MotionTrace(moments, why);
  }

  /** The place along the travel stands last in the state. */
  private void rates(double time, double[] state, double[] rates) {
    System.arraycopy(state, 0, plain, 0, states);
    motion.rates(time, state[states], plain, plainRates);
    System.arraycopy(plainRates, 0, rates, 0, states);
    rates[states] = state[CraftMotion.FORWARD];
  }

  /** Above 0 while an end has not come. */
  private double room(MotionEnd end, double time, double[] state) {
    Attitude at = Attitude.of(state[CraftMotion.PITCH]);
    double depth = state[CraftMotion.DEPTH];
    double place = state[states];
    return switch (end) {
      case BOW_TOUCHES -> shape.bow(at, depth, place, time, water);
      case STERN_TOUCHES -> shape.stern(at, depth, place, time, water);
      case WING_BREACHES -> shape.wings(at, depth, place, time, water);
      case PROPELLER_BREACHES -> shape.propeller(at, depth, place, time, water);
      case RIDER_FALLS -> balance(time, state);
      case LIMIT_OF_MODEL ->
          Math.min(
              STEEPEST - Math.abs(at.angle()),
              Math.min(state[CraftMotion.FORWARD] - SLOWEST, depth));
      case RAN_OUT -> 1;
    };
  }

  private double balance(double time, double[] state) {
    Rider rider = model.craft().rideCase().rider();
    worked(time, state);
    double loaded =
        motion.load() / (rider.allMass() * trimwright.kernel.rig.Craft.GRAVITY) - LEAST_LOAD;
    if (!free) {
      // Upright or not: nobody presses where there is no deck.
      double press = shape.alongDeck(state[CraftMotion.PITCH], motion.pressAhead());
      return Math.min(loaded, shape.deckLeft(press));
    }
    double sway = state[CraftMotion.BODY] - motion.pressAhead();
    return Math.min(loaded, FALLEN - Math.abs(sway) / rider.height());
  }

  private void worked(double time, double[] state) {
    System.arraycopy(state, 0, plain, 0, states);
    motion.rates(time, state[states], plain, plainRates);
  }

  private MotionMoment moment(double time, double[] state) {
    worked(time, state);
    double pitch = state[CraftMotion.PITCH];
    Attitude at = Attitude.of(pitch);
    double depth = state[CraftMotion.DEPTH];
    double place = state[states];
    double rest = shape.aheadOfDatum(pitch, trim.footPressure());
    double body =
        free
            ? state[CraftMotion.BODY] - rest - motion.lean()
            : shape.aheadOfDatum(pitch, controls.footPressure(time)) - rest;
    WingPlaces wing = model.places();
    return new MotionMoment(
        time,
        state[CraftMotion.FORWARD],
        pitch + shape.baseAngle(),
        state[CraftMotion.RATE],
        depth - wing.frontAhead() * at.sin() - wing.frontAbove() * at.cos(),
        shape.alongDeck(pitch, motion.pressAhead()),
        controls.thrust(time, state[CraftMotion.FORWARD]),
        body,
        shape.bow(at, depth, place, time, water),
        shape.stern(at, depth, place, time, water),
        shape.wings(at, depth, place, time, water),
        shape.propeller(at, depth, place, time, water),
        water.height(place, time),
        motion.load());
  }
}
