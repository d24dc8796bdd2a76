package trimwright.kernel.cause;

import java.util.OptionalDouble;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

/**
 * Looks for the lowest speed at which the wings carry the weight, above one at which they do not.
 * Remembers its last search, since the speeds of a curve mostly ask for the same edge. Not for use
 * by two threads.
 */
public final class LowestFlight {
  /** Step of the search, as a ratio [1]. */
  private static final double SEARCH_STEP = 1.05;

  /** No faster than any foil board is ridden [m/s]: 100 km/h. */
  private static final double FASTEST = 100 / 3.6;

  /** Width of the last bracket of speed [m/s]: less than is ever shown. */
  private static final double SPEED_TOLERANCE = 1e-3;

  private final CaseSolver solver;
  private double lastStart = Double.POSITIVE_INFINITY;
  private OptionalDouble lastFound = OptionalDouble.empty();

  /**
   * A search on one case.
   *
   * @param solver of the case
   */
  public LowestFlight(CaseSolver solver) {
    this.solver = solver;
  }

  /** Whether the wings carry the weight without stall, held by feet and drive or not. */
  static boolean flies(TrimOutcome outcome) {
    return !(outcome instanceof TrimOutcome.NoTrim none && grounded(none.reason()));
  }

  private static boolean grounded(NoTrimReason reason) {
    return reason == NoTrimReason.TOO_SLOW || reason == NoTrimReason.STALLED;
  }

  private boolean flies(double speed) {
    return solver.findReason(speed).filter(LowestFlight::grounded).isEmpty();
  }

  /**
   * The lowest speed that flies.
   *
   * @param slow a speed that does not [m/s]
   * @return [m/s]; empty where nothing faster flies
   */
  public OptionalDouble above(double slow) {
    // From the last start up to what it found nothing flies.
    if (slow < lastStart || slow >= lastFound.orElse(Double.POSITIVE_INFINITY)) {
      lastFound = search(slow);
      lastStart = slow;
    }
    return lastFound;
  }

  private OptionalDouble search(double slow) {
    double low = slow;
    for (double high = low * SEARCH_STEP; high <= FASTEST; high *= SEARCH_STEP) {
      if (flies(high)) {
        while (high - low > SPEED_TOLERANCE) {
          double middle = 0.5 * (low + high);
          if (flies(middle)) {
            high = middle;
          } else {
            low = middle;
          }
        }
        return OptionalDouble.of(high);
      }
      low = high;
    }
    return OptionalDouble.empty();
  }
}
