package trimwright.kernel.turn;

import java.util.Optional;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.TurnFlow;

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
  /** Height of a standing mass centre over the stature: see the reference checks (i-com). */
  private static final double MASS_CENTRE = 0.56;

  private static final int MOST_ROUNDS = 12;

  private static final int MOST_STEPS = 20;

  /** Share of the weight that may be left over in the flow at hand [1]. */
  private static final double AGREED = 1e-6;

  private static final double TRIAL = 1e-3;

  /** Angles beyond which no turn is looked for, and the largest step from flow to flow [rad]. */
  private static final double MOST_ANGLE = 0.6;

  private static final double MOST_STEP = 0.15;

  /**
   * How near a flow must have been solved for its answer to stand [rad]. A test holds pitch, thrust
   * and side force to what a flow solved anew gives.
   */
  private static final double NEAR = 1.5e-3;

  /** The same for the speed of a stall, as a share [1]. */
  private static final double NEAR_SPEED = 5e-3;

  /** A stall within this many times the last circle's speed is its end [1]. Chosen. */
  public static final double NEAR_CIRCLE = 1.02;

  private static final double MARGIN_AGREED = 1e-5;

  /** Angle from no lift to the stall, to begin with [rad], and largest change of speed at once. */
  private static final double RANGE = 0.25;

  private static final double MOST_CHANGE = 1.3;

  private final TurnBalance balance;
  private final TurnReading reading;

  /**
   * A solver.
   *
   * @param rideCase the case
   */
  public TurnSolver(RideCase rideCase) {
    balance = new TurnBalance(rideCase);
    reading = new TurnReading(balance);
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
    return at(speed, bank, pitch, 0);
  }

  /**
   * The turn with a bank, from a pitch and a slip close to its own.
   *
   * @param speed of the foil through the water [m/s], above 0
   * @param bank from 0 to 1.2 [rad]
   * @param pitch of the fuselage to begin with [rad]
   * @param slip to begin with [rad]
   * @return as {@link #at(double, double, double)}
   */
  Optional<TurnPoint> at(double speed, double bank, double pitch, double slip) {
    Optional<TurnPath> path = path(speed, bank);
    if (path.isEmpty()) {
      return Optional.empty();
    }
    TurnBalance.Speed at = balance.speed(speed);
    double[] x = {pitch, slip};
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Optional<Frozen> frozen = frozen(bank, path.get(), x);
      if (frozen.isEmpty()) {
        return Optional.empty();
      }
      Optional<TurnBalance.State> found = frozen.get().balanced(at, path.get(), x);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      double[] next = angles(found.get());
      if (apart(next, x) < NEAR) {
        return found.get().datumDepth() > 0
            ? Optional.of(reading.point(at, bank, path.get(), found.get()))
            : Optional.empty();
      }
      x = next;
    }
    return Optional.empty();
  }

  /**
   * The slowest turn of a bank.
   *
   * @param speed just as slow as it goes [m/s]
   * @param circle whether it ends there because circles of this bank end there or just below: what
   *     stalls so near to the last circle is its curve and not the speed
   */
  public record Slowest(double speed, boolean circle) {}

  /**
   * The slowest turn of a bank without a stalled strip.
   *
   * @param bank from 0 to 1.2 [rad]
   * @param from speed to begin with [m/s]
   * @param pitch of the fuselage to begin with, close to that of the stall [rad]
   * @return empty where the search does not settle
   */
  public Optional<Slowest> slowest(double bank, double from, double pitch) {
    double least = TurnPath.slowest(bank, height());
    double speed = Math.max(from, least);
    double[] x = {pitch, 0};
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Optional<Frozen> frozen = frozen(bank, path(speed, bank).orElseThrow(), x);
      Optional<Stall> found =
          frozen.isEmpty() ? Optional.empty() : stall(frozen.get(), bank, speed, least, x);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      double[] next = angles(found.get().state);
      boolean near = apart(next, x) < NEAR && Math.abs(found.get().speed / speed - 1) < NEAR_SPEED;
      speed = found.get().speed;
      x = next;
      if (near) {
        return Optional.of(new Slowest(speed, speed <= NEAR_CIRCLE * least));
      }
    }
    return Optional.empty();
  }

  /** A state at a speed. */
  private record Stall(double speed, TurnBalance.State state) {}

  /** Where a flow's first strip stalls: the margin is nearly straight over one over V². */
  private Optional<Stall> stall(
      Frozen frozen, double bank, double from, double least, double[] start) {
    double[] x = start;
    double speed = from;
    double before = Double.NaN;
    double marginBefore = Double.NaN;
    for (int step = 0; step < MOST_STEPS; step++) {
      TurnPath path = path(speed, bank).orElseThrow();
      Optional<TurnBalance.State> state = frozen.balanced(balance.speed(speed), path, x);
      if (state.isEmpty()) {
        return Optional.empty();
      }
      x = angles(state.get());
      double margin = margin(state.get());
      if (Math.abs(margin) < MARGIN_AGREED || speed == least && margin > 0) {
        return Optional.of(new Stall(speed, state.get()));
      }
      double now = 1 / (speed * speed);
      double slope = step == 0 ? (margin - RANGE) / now : (margin - marginBefore) / (now - before);
      double next = now - margin / slope;
      before = now;
      marginBefore = margin;
      double wanted = next > 0 ? 1 / Math.sqrt(next) : Double.POSITIVE_INFINITY;
      speed = Math.max(least, Math.max(speed / MOST_CHANGE, Math.min(MOST_CHANGE * speed, wanted)));
    }
    return Optional.empty();
  }

  /** The turns of one flow, with how up and sideways forces go with pitch and slip. */
  private final class Frozen {
    private final TurnFlow flow;
    private final double bank;

    /** Per dynamic pressure: up and aside over pitch and slip. */
    private final double[] slopes = new double[4];

    private boolean known;

    Frozen(TurnFlow flow, double bank) {
      this.flow = flow;
      this.bank = bank;
    }

    /** The state in balance. */
    Optional<TurnBalance.State> balanced(TurnBalance.Speed at, TurnPath path, double[] start) {
      double[] x = start.clone();
      TurnBalance.State now = balance.state(flow, at, bank, path, x);
      if (!known) {
        learn(at, path, x, now);
      }
      double weight = balance.weight();
      double[] j = slopes.clone();
      for (int step = 0; step < MOST_STEPS; step++) {
        if (Math.hypot(now.up(), now.aside()) < AGREED * weight) {
          return Optional.of(now);
        }
        double up = now.up() / at.pressure;
        double aside = now.aside() / at.pressure;
        double det = j[0] * j[3] - j[1] * j[2];
        double dp = -(up * j[3] - aside * j[1]) / det;
        double ds = -(aside * j[0] - up * j[2]) / det;
        double most = Math.max(Math.abs(dp), Math.abs(ds));
        double scale = most > MOST_STEP ? MOST_STEP / most : 1;
        dp *= scale;
        ds *= scale;
        x[0] += dp;
        x[1] += ds;
        if (!(Math.abs(x[0]) < MOST_ANGLE) || !(Math.abs(x[1]) < MOST_ANGLE)) {
          return Optional.empty();
        }
        now = balance.state(flow, at, bank, path, x);
        // C. G. Broyden 1965: the slopes learn from the step just made.
        double length = dp * dp + ds * ds;
        double missUp = now.up() / at.pressure - up - j[0] * dp - j[1] * ds;
        double missAside = now.aside() / at.pressure - aside - j[2] * dp - j[3] * ds;
        j[0] += missUp * dp / length;
        j[1] += missUp * ds / length;
        j[2] += missAside * dp / length;
        j[3] += missAside * ds / length;
      }
      return Optional.empty();
    }

    private void learn(TurnBalance.Speed at, TurnPath path, double[] x, TurnBalance.State now) {
      for (int i = 0; i < 2; i++) {
        double[] moved = x.clone();
        moved[i] += TRIAL;
        TurnBalance.State there = balance.state(flow, at, bank, path, moved);
        slopes[i] = (there.up() - now.up()) / (TRIAL * at.pressure);
        slopes[2 + i] = (there.aside() - now.aside()) / (TRIAL * at.pressure);
      }
      known = true;
    }
  }

  private Optional<Frozen> frozen(double bank, TurnPath path, double[] x) {
    return balance.flow(bank, path, x).map(flow -> new Frozen(flow, bank));
  }

  private static double[] angles(TurnBalance.State state) {
    return new double[] {state.motion().pitch(), state.motion().heading()};
  }

  private static double apart(double[] a, double[] b) {
    return Math.max(Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]));
  }

  private static double margin(TurnBalance.State state) {
    return Math.min(state.wings().get(0).stallMargin(), state.wings().get(1).stallMargin());
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

  /**
   * The steepest bank with which a circle exists at a speed.
   *
   * @param speed of the foil through the water [m/s], above 0
   * @return [rad]
   */
  double steepest(double speed) {
    return TurnPath.steepest(speed, height());
  }

  private Optional<TurnPath> path(double speed, double bank) {
    return TurnPath.of(speed, bank, height());
  }

  private double height() {
    return balance.craft.deck().height() + MASS_CENTRE * balance.rideCase.rider().height();
  }
}
