package trimwright.kernel.limit;

import java.util.EnumMap;
import java.util.Map;

/** A figure for every limit: the chosen ones, or what a shop has tightened. Immutable. */
public final class RideLimits {
  /** The figures chosen for everybody. */
  public static final RideLimits CHOSEN = new RideLimits(new EnumMap<>(RideLimit.class));

  private final Map<RideLimit, Double> tightened;

  private RideLimits(Map<RideLimit, Double> tightened) {
    this.tightened = tightened;
  }

  /**
   * The chosen figures with some of them tightened.
   *
   * @param figures the tightened ones, each in its limit's unit
   * @return a figure for every limit
   * @throws IllegalArgumentException if a figure is looser than the chosen one or stricter than the
   *     strictest
   */
  public static RideLimits tightened(Map<RideLimit, Double> figures) {
    Map<RideLimit, Double> copy = new EnumMap<>(RideLimit.class);
    figures.forEach(
        (limit, value) -> {
          if (!limit.permits(value)) {
            throw new IllegalArgumentException(
                limit
                    + " may lie from "
                    + limit.chosen()
                    + " to "
                    + limit.strictest()
                    + ", was "
                    + value);
          }
          copy.put(limit, value);
        });
    return new RideLimits(copy);
  }

  /**
   * The figure of a limit.
   *
   * @param limit which
   * @return its figure in the limit's unit
   */
  public double of(RideLimit limit) {
    return tightened.getOrDefault(limit, limit.chosen());
  }

  /** Whether the shop has tightened a limit. */
  public boolean isTightened(RideLimit limit) {
    return of(limit) != limit.chosen();
  }

  /**
   * Whether a quantity breaks a limit.
   *
   * @param limit which
   * @param value what was computed, in the limit's unit; NaN breaks none
   * @return true outside
   */
  public boolean breaks(RideLimit limit, double value) {
    return limit.isBroken(value, of(limit));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RideLimits limits && tightened.equals(limits.tightened);
  }

  @Override
  public int hashCode() {
    return tightened.hashCode();
  }

  @Override
  public String toString() {
    return tightened.isEmpty() ? "chosen limits" : "limits tightened: " + tightened;
  }
}
