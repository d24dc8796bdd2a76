package trimwright.kernel.propel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of a drive's inside. A measured table goes before the blades.
 *
 * @param blades of the propeller
 * @param openWater rows of its measured table; none where there is no table
 * @param motorEfficiency of motor and controller at full load [1]
 * @param greatestThrust that the maker gives [N]
 * @param highestRevolutions of the propeller [1/s]
 */
public record Powerplant(
    Optional<Blades> blades,
    List<OpenWaterRow> openWater,
    OptionalDouble motorEfficiency,
    OptionalDouble greatestThrust,
    OptionalDouble highestRevolutions) {
  /** Nothing is known. */
  public static final Powerplant UNKNOWN =
      new Powerplant(
          Optional.empty(),
          List.of(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());

  /** Copies the list. */
  public Powerplant {
    openWater = List.copyOf(openWater);
  }
}
