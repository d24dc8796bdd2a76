package trimwright.kernel.band;

import java.util.Optional;
import java.util.Set;

/**
 * Another case to hold a curve against.
 *
 * @param bands its curve with the bands, over the same speeds
 * @param shared inputs that both cases have from the same source
 */
public record Reference(Bands bands, Set<Input> shared) {
  /** Copies the set. */
  public Reference {
    shared = Set.copyOf(shared);
  }

  /**
   * How a number differs from the reference's.
   *
   * @param number with its spread, of the curve's outcome at that place
   * @param index of that outcome
   * @param quantity what it is
   * @return the difference with its band; empty where the reference has no such number
   */
  public Optional<Spread.Difference> from(Spread number, int index, Quantity quantity) {
    return bands.find(index, quantity).map(other -> number.minus(other, shared));
  }
}
