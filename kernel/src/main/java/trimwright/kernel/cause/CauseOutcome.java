package trimwright.kernel.cause;

import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** What the question for the cause gives. */
public sealed interface CauseOutcome {

  /**
   * The split.
   *
   * @param ridden trim point at the speed ridden
   * @param wished trim point at the wished speed
   * @param pitch deck pitch [rad]
   * @param footShare [1]
   * @param footPressure foot-pressure centre ahead of the mast's axis [m]
   */
  record Split(
      TrimPoint ridden,
      TrimPoint wished,
      CauseParts pitch,
      CauseParts footShare,
      CauseParts footPressure)
      implements CauseOutcome {}

  /**
   * No split, because at least one of the two speeds has no trim point.
   *
   * @param ridden what the speed ridden gives, where it has no trim point
   * @param wished what the wished speed gives, where it has no trim point
   * @param fliesFrom lowest speed above these at which the wings carry the weight without stall
   *     [m/s]; empty where neither speed is too slow, or where there is none
   */
  record NoSplit(
      Optional<TrimOutcome.NoTrim> ridden,
      Optional<TrimOutcome.NoTrim> wished,
      OptionalDouble fliesFrom)
      implements CauseOutcome {
    /**
     * Checks that there is something to tell.
     *
     * @throws IllegalArgumentException if both speeds have a trim point
     */
    public NoSplit {
      if (ridden.isEmpty() && wished.isEmpty()) {
        throw new IllegalArgumentException("one of the speeds must have no trim point");
      }
    }

    /** The wished speed's outcome where that has no trim point, else the ridden speed's. */
    public TrimOutcome.NoTrim first() {
      return wished.or(() -> ridden).orElseThrow();
    }

    /** Whether {@link #first} is the wished speed's. */
    public boolean wishedSpeed() {
      return wished.isPresent();
    }
  }
}
