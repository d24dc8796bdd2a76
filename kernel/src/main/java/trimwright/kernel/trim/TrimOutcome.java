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
   */
  record NoTrim(double speed, NoTrimReason reason, Optional<TrimPoint> wouldNeed)
      implements TrimOutcome {
    @Override
    public Optional<TrimPoint> findPoint() {
      return Optional.empty();
    }
  }
}
