package trimwright.kernel.trim;

import java.util.Optional;

/** What a speed gives: a trim point, or the reason why there is none. */
public sealed interface TrimOutcome {

  /** The speed asked for [m/s]. */
  double speed();

  /** The trim point, where there is one. */
  Optional<TrimPoint> findPoint();

  /**
   * A steady state that can be ridden.
   *
   * @param point the state
   */
  record Trimmed(TrimPoint point) implements TrimOutcome {
    @Override
    public double speed() {
      return point.speed();
    }

    @Override
    public Optional<TrimPoint> findPoint() {
      return Optional.of(point);
    }
  }

  /**
   * No steady state.
   *
   * @param speed the speed asked for [m/s]
   * @param reason why not
   * @param wouldNeed the balance of forces that nobody could hold or no drive could push, where one
   *     exists
   * @param excess what carries more than the weight even at the lowest pitch computed, so that a
   *     wing would have to press the craft down; such a speed counts as {@link
   *     NoTrimReason#STALLED}
   */
  record NoTrim(
      double speed, NoTrimReason reason, Optional<TrimPoint> wouldNeed, Optional<Excess> excess)
      implements TrimOutcome {
    /**
     * No steady state for want of lift, power or reach.
     *
     * @param speed the speed asked for [m/s]
     * @param reason why not
     * @param wouldNeed the balance that nobody could hold, where one exists
     */
    public NoTrim(double speed, NoTrimReason reason, Optional<TrimPoint> wouldNeed) {
      this(speed, reason, wouldNeed, Optional.empty());
    }

    @Override
    public Optional<TrimPoint> findPoint() {
      return Optional.empty();
    }
  }

  /** What carries more than the weight where the wings would have to press down. */
  enum Excess {
    /** The wings themselves still lift at the lowest pitch computed: a lower speed mends it. */
    WINGS,
    /** All the rest, buoyancy, thrust and pull: it does so without the wings. */
    REST
  }
}
