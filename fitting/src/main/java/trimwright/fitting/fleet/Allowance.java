package trimwright.fitting.fleet;

import java.time.Duration;

/**
 * How long a search may go on. Asked between the steps of a search and handed to the solver, so
 * that a search ends a little after it is used up; whoever makes one owns the clock.
 */
@FunctionalInterface
public interface Allowance {
  /** Longest that a single step is let run. */
  Duration LONGEST = Duration.ofMinutes(10);

  /** What is left; nothing, or less, ends the search with what it has. */
  Duration left();

  /** Whether nothing is left. */
  default boolean isOver() {
    Duration left = left();
    return left.isZero() || left.isNegative();
  }

  /** As long as it takes. */
  static Allowance unlimited() {
    return () -> LONGEST;
  }
}
