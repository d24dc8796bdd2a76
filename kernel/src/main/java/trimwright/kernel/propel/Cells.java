package trimwright.kernel.propel;

import java.util.OptionalDouble;

/**
 * What is known of a battery's cells.
 *
 * @param temperature [K]
 * @param voltage nominal, of the whole battery [V]
 * @param resistance of the whole battery at 20 °C [ohm]
 * @param maximumCurrent [A]
 */
public record Cells(
    double temperature,
    OptionalDouble voltage,
    OptionalDouble resistance,
    OptionalDouble maximumCurrent) {
  /** The temperature at which cells are rated, 20 °C (IEC 61960, from memory) [K]. */
  public static final double RATED_TEMPERATURE = 293.15;

  /** Nothing is known; as warm as they are rated. */
  public static final Cells UNKNOWN = at(RATED_TEMPERATURE);

  /**
   * Cells of which only the temperature is known.
   *
   * @param temperature [K]
   */
  public static Cells at(double temperature) {
    return new Cells(
        temperature, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }
}
