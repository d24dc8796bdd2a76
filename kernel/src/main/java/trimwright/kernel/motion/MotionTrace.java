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

  /** The moment with the lowest pitch of the deck. */
  public MotionMoment lowestPitch() {
    MotionMoment lowest = first();
    for (MotionMoment m : moments) {
      if (m.pitch() < lowest.pitch()) {
        lowest = m;
      }
    }
    return lowest;
  }

  /** Least height of the bow above the water [m]. */
  public double leastBowClearance() {
    return moments.stream().mapToDouble(MotionMoment::bowClearance).min().orElseThrow();
  }
}
