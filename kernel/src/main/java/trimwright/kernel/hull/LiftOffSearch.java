package trimwright.kernel.hull;

import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.numeric.Roots;

/** The slowest speed at which the wings carry everything, the board's stern just touching. */
final class LiftOffSearch {
  private static final double SLOWEST = 0.5;
  private static final double STEP = 0.5;
  private static final double SPEED_TOLERANCE = 1e-6;
  private static final double TRIM_TOLERANCE = 1e-9;

  private final WaterBalance balance;
  private final TakeOffLimits limits;

  LiftOffSearch(WaterBalance balance, TakeOffLimits limits) {
    this.balance = balance;
    this.limits = limits;
  }

  /** By the wings alone, whatever the thrust; empty where they never carry. */
  Optional<WaterState> carried() {
    double before = SLOWEST;
    double atBefore = spare(before);
    if (atBefore >= 0) {
      return Optional.of(steepest(before).orElseThrow());
    }
    for (double v = before + STEP; v <= limits.fastest() + 1e-9; v += STEP) {
      double here = spare(v);
      if (here >= 0) {
        double root = Roots.between(this::spare, before, atBefore, v, here, SPEED_TOLERANCE);
        return steepest(root);
      }
      before = v;
      atBefore = here;
    }
    return Optional.empty();
  }

  /**
   * The slowest from a speed on at which the drive also overcomes the drag: faster, a flatter trim
   * carries and the wings drag less.
   *
   * @param first by the wings alone
   */
  Optional<WaterState> driven(WaterState first) {
    if (surplus(first) >= 0) {
      return Optional.of(first);
    }
    double before = first.speed();
    for (double v = before + STEP; v <= limits.fastest() + 1e-9; v += STEP) {
      Optional<WaterState> there = touching(v);
      if (there.isPresent() && surplus(there.get()) >= 0) {
        double root =
            Roots.between(
                s -> touching(s).map(this::surplus).orElse(-1.0),
                before,
                touching(before).map(this::surplus).orElse(-1.0),
                v,
                surplus(there.get()),
                SPEED_TOLERANCE);
        return touching(root);
      }
      before = v;
    }
    return Optional.empty();
  }

  private double surplus(WaterState state) {
    double greatest = balance.at(state.speed()).greatest();
    return Double.isNaN(greatest) ? 0 : state.level(greatest) - state.drag();
  }

  /** What the wings carry beyond the weight at the steepest trim allowed [N]. */
  private double spare(double speed) {
    return steepest(speed).map(WaterState::up).orElse(-1e6);
  }

  private Optional<WaterState> steepest(double speed) {
    WaterBalance.AtSpeed here = balance.at(speed);
    OptionalDouble trim = here.steepest(limits.stallMargin());
    if (trim.isEmpty() || trim.getAsDouble() < limits.leastTrim()) {
      return Optional.empty();
    }
    return Optional.of(here.at(Math.min(trim.getAsDouble(), limits.mostTrim()), 0));
  }

  /** The state at a speed with the stern just touching, at the trim that carries. */
  private Optional<WaterState> touching(double speed) {
    WaterBalance.AtSpeed here = balance.at(speed);
    Optional<WaterState> high = steepest(speed);
    WaterState low = here.at(limits.leastTrim(), 0);
    if (high.isEmpty() || high.get().up() < 0) {
      return Optional.empty();
    }
    if (low.up() >= 0) {
      return Optional.of(low);
    }
    double trim =
        Roots.between(
            t -> here.at(t, 0).up(),
            low.trim(),
            low.up(),
            high.get().trim(),
            high.get().up(),
            TRIM_TOLERANCE);
    return Optional.of(here.at(trim, 0));
  }
}
