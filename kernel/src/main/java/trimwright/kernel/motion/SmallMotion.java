package trimwright.kernel.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.numeric.LinearMotion;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;

/**
 * The motion about one trim, made linear: rates over states and over what pushes, by central
 * differences of {@link CraftMotion}.
 */
final class SmallMotion {
  /** Steps of the states [m/s, m/s, rad/s, rad, m, rad, m, m/s]. */
  private static final double[] STEPS = {1e-3, 1e-3, 1e-3, 1e-5, 1e-4, 1e-5, 1e-5, 1e-4};

  /** Step of the foot pressure [m]. */
  private static final double PRESS_STEP = 1e-4;

  /** Slower growth than this is none: rounding and steps [1/s]. */
  private static final double NO_GROWTH = 1e-3;

  /** Time between the states of an answer [s]. */
  private static final double STEP = 0.01;

  private final MotionModel model;
  private final MotionTrim trim;
  private final boolean free;
  private final LinearMotion motion;
  private final double[] press;

  SmallMotion(MotionModel model, MotionTrim trim, boolean free) {
    this.model = model;
    this.trim = trim;
    this.free = free;
    CraftMotion craft = new CraftMotion(model, trim, model.held(trim), WaterMotion.STILL, free);
    double[] state = craft.start();
    int n = state.length;
    double[][] rates = new double[n][n];
    double[] low = new double[n];
    double[] high = new double[n];
    for (int k = 0; k < n; k++) {
      double at = state[k];
      state[k] = at - STEPS[k];
      craft.rates(0, 0, state, low);
      state[k] = at + STEPS[k];
      craft.rates(0, 0, state, high);
      state[k] = at;
      for (int i = 0; i < n; i++) {
        rates[i][k] = (high[i] - low[i]) / (2 * STEPS[k]);
      }
    }
    motion = new LinearMotion(rates);
    press = new double[n];
    pressed(-PRESS_STEP).rates(0, 0, state, low);
    pressed(PRESS_STEP).rates(0, 0, state, high);
    for (int i = 0; i < n; i++) {
      press[i] = (high[i] - low[i]) / (2 * PRESS_STEP);
    }
  }

  private CraftMotion pressed(double by) {
    Controls held = model.held(trim);
    Controls moved = Controls.of(time -> held.footPressure(time) + by, held::thrust);
    return new CraftMotion(model, trim, moved, WaterMotion.STILL, free);
  }

  LinearMotion motion() {
    return motion;
  }

  /** Rates per foot pressure forward. */
  double[] press() {
    return press;
  }

  /**
   * Its modes, the fastest growing first; of a swing one. What moves most is told by the energies
   * of the common mass centre's motion and of the turn about it, the rider's mass on the deck.
   */
  List<Mode> modes() {
    Craft craft = model.craft();
    double body = craft.rideCase().rider().allMass();
    double mass = craft.partsMass() + body;
    Deck deck = craft.deck();
    double deckPitch = trim.pitch() + deck.baseAngle();
    double footAhead = deck.footingAhead(trim.pitch()) + trim.footPressure() * Math.cos(deckPitch);
    double footAbove = deck.footingAbove(trim.pitch()) + trim.footPressure() * Math.sin(deckPitch);
    Attitude at = Attitude.of(trim.pitch());
    double ahead = (body * footAhead + craft.partsMass() * craft.partsAhead(at)) / mass;
    double above = (body * footAbove + craft.partsMass() * craft.partsAbove(at)) / mass;
    double inertia =
        craft.partsInertia()
            + body * (square(footAhead) + square(footAbove))
            - mass * (square(ahead) + square(above));
    List<Mode> modes = new ArrayList<>();
    for (LinearMotion.Eigen e : motion.modes()) {
      if (e.frequency() < 0) {
        continue;
      }
      double forward = mass * energy(e, CraftMotion.FORWARD, -above);
      double up = mass * energy(e, CraftMotion.UP, ahead);
      double turn =
          inertia * (square(e.real()[CraftMotion.RATE]) + square(e.imaginary()[CraftMotion.RATE]));
      Mode.Mainly mainly =
          forward >= up && forward >= turn
              ? Mode.Mainly.SPEED
              : up >= turn ? Mode.Mainly.HEIGHT : Mode.Mainly.PITCH;
      modes.add(new Mode(e.growth(), e.frequency(), mainly));
    }
    return modes;
  }

  private static double energy(LinearMotion.Eigen e, int state, double arm) {
    return square(e.real()[state] + arm * e.real()[CraftMotion.RATE])
        + square(e.imaginary()[state] + arm * e.imaginary()[CraftMotion.RATE]);
  }

  private static double square(double x) {
    return x * x;
  }

  /** What it takes to hold it with an answer after a delay [s]. */
  Hold hold(double delay) {
    List<double[]> growing = new ArrayList<>();
    for (double[] value : motion.eigenvalues()) {
      if (value[0] > NO_GROWTH) {
        growing.add(value);
      }
    }
    if (growing.isEmpty()) {
      return Hold.STEADY;
    }
    return DelayedHold.holds(growing, delay) ? Hold.RIDEABLE : Hold.NOBODY;
  }

  /** Largest pitch rate within a time [s] after the foot pressure went forward by a step [m]. */
  double peakPitchRate(double step, double within) {
    double[] most = {0};
    motion.fromRest(
        scaled(step),
        STEP,
        (int) Math.round(within / STEP),
        (time, state) -> {
          most[0] = Math.max(most[0], Math.abs(state[CraftMotion.RATE]));
          return true;
        });
    return most[0];
  }

  /** Time until the height has changed by so much [m] after such a step [m], up to a longest. */
  OptionalDouble timeToHeight(double step, double height, double longest) {
    double[] last = new double[2];
    double[] found = {Double.NaN};
    motion.fromRest(
        scaled(step),
        STEP,
        (int) Math.round(longest / STEP),
        (time, state) -> {
          double now = Math.abs(state[CraftMotion.DEPTH]);
          if (now >= height) {
            found[0] = time - STEP * (now - height) / (now - last[1]);
            return false;
          }
          last[0] = time;
          last[1] = now;
          return true;
        });
    return Double.isNaN(found[0]) ? OptionalDouble.empty() : OptionalDouble.of(found[0]);
  }

  private double[] scaled(double step) {
    double[] push = press.clone();
    for (int i = 0; i < push.length; i++) {
      push[i] *= step;
    }
    return push;
  }
}
