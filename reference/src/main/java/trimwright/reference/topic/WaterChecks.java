package trimwright.reference.topic;

import java.util.Map;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

/** Density, viscosity and vapour pressure of fresh and sea water. */
public final class WaterChecks {
  private static final double ZERO_CELSIUS = 273.15;
  private static final double KILOGRAM_PER_GRAM = 1e-3;

  /**
   * Saunders 1990: a temperature of IPTS-68 over the same one of ITS-90, both in degrees Celsius.
   */
  private static final double IPTS68_PER_ITS90 = 1.00024;

  /** Salt per mass of water [g/kg] of practical salinity 1 (Millero et al. 2008). */
  private static final double GRAMS_PER_PRACTICAL_SALINITY = 35.16504 / 35;

  private WaterChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "water density", c -> water(c).density(),
        "water kinematic viscosity", c -> water(c).kinematicViscosity(),
        "water dynamic viscosity", WaterChecks::dynamicViscosity,
        "water vapour pressure", c -> water(c).vapourPressure());
  }

  private static double dynamicViscosity(Conditions conditions) {
    Water water = water(conditions);
    return water.kinematicViscosity() * water.density();
  }

  static Water water(Conditions conditions) {
    double celsius =
        conditions.has("temperature_ipts68_c")
            ? conditions.number("temperature_ipts68_c") / IPTS68_PER_ITS90
            : conditions.number("temperature_c");
    double gramsPerKilogram =
        conditions.has("practical_salinity")
            ? conditions.number("practical_salinity") * GRAMS_PER_PRACTICAL_SALINITY
            : conditions.number("salinity_g_kg");
    return WaterModel.at(celsius + ZERO_CELSIUS, gramsPerKilogram * KILOGRAM_PER_GRAM);
  }
}
