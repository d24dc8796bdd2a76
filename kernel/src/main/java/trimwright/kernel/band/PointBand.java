package trimwright.kernel.band;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The bands of one trim point.
 *
 * @param spreads of each quantity that has one
 */
public record PointBand(Map<Quantity, Spread> spreads) {
  /** Copies the map. */
  public PointBand {
    EnumMap<Quantity, Spread> copy = new EnumMap<>(Quantity.class);
    copy.putAll(spreads);
    spreads = Map.copyOf(copy);
  }

  /**
   * The band of a quantity.
   *
   * @param quantity which
   * @return empty where the point has no such number, or where the trim is lost within an input's
   *     tolerance on both sides
   */
  public Optional<Spread> find(Quantity quantity) {
    return Optional.ofNullable(spreads.get(quantity));
  }
}
