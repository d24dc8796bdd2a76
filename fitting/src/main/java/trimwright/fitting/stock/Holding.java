package trimwright.fitting.stock;

import java.util.Objects;
import java.util.OptionalDouble;
import trimwright.kernel.band.KnownBy;

/**
 * How a shop holds a part.
 *
 * @param count how many there are alike
 * @param state what they are there for
 * @param price of one, in the shop's currency, where it is known
 * @param knownBy how the geometry is known; from it follow the tolerances
 */
public record Holding(int count, PartState state, OptionalDouble price, KnownBy knownBy) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the count or the price is below 0
   */
  public Holding {
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(knownBy, "knownBy");
    if (count < 0) {
      throw new IllegalArgumentException("count must be 0 or more, was " + count);
    }
    if (price.isPresent() && !(price.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("price must be 0 or more, was " + price.getAsDouble());
    }
  }

  /** Whether there is one to put on a setup today. */
  public boolean isThere() {
    return count > 0 && state != PartState.OUT;
  }
}
