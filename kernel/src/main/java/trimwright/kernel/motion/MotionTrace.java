package trimwright.kernel.motion;

import java.util.List;

/**
 * A motion over time.
 *
 * @param moments from the beginning to the end, evenly spaced but for the last
 * @param end how it ended
 */
public record MotionTrace(List<MotionMoment> moments, MotionEnd end) {
  /** Copies the list. */
  public MotionTrace {
    moments = List.copyOf(moments);
  }

  /** The first moment. */
  public MotionMoment first() {
    return moments.get(0);
  }

  /** The last moment. */
  public MotionMoment last() {
    return moments.get(moments.size() - 1);
  }

  /**
   * The lowest pitch of the deck.
   *
   * @param until the last moment that counts [s]
   * @return [rad]
   */
  public double lowestPitch(double until) {
    return moments.stream()
        .filter(m -> m.time() <= until)
        .mapToDouble(MotionMoment::pitch)
        .min()
        .orElseThrow();
  }

  /** Least height of the bow above the water [m]. */
  public double leastBowClearance() {
    return moments.stream().mapToDouble(MotionMoment::bowClearance).min().orElseThrow();
  }
}
