package trimwright.kernel.water;

/**
 * Water at one atmosphere from temperature and salinity.
 *
 * <p>Salinity is the mass of dissolved salt per mass of water (absolute salinity). Salt of another
 * make-up than sea salt is taken as sea salt, which changes the density of a lake by less than 0.1
 * kg/m³.
 */
public final class WaterModel {

  /** Lowest temperature [K], -2 °C: the lower end of EOS-80. */
  public static final double LOWEST_TEMPERATURE = 271.15;

  /** Highest temperature [K], 40 °C: the upper end of EOS-80. */
  public static final double HIGHEST_TEMPERATURE = 313.15;

  /** Highest salinity [kg/kg]: the upper end of EOS-80. */
  public static final double HIGHEST_SALINITY = 0.042;

  private WaterModel() {}

  /**
   * The water of a given temperature and salinity at one atmosphere (101 325 Pa).
   *
   * @param temperature [K], ITS-90, 271.15 to 313.15
   * @param salinity salt per mass of water [kg/kg], 0 to 0.042
   * @return density, kinematic viscosity, vapour pressure
   * @throws IllegalArgumentException if temperature or salinity lies outside its range
   */
  public static Water at(double temperature, double salinity) {
    requireWithin("water temperature", temperature, "K", LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE);
    requireWithin("salinity", salinity, "kg/kg", 0, HIGHEST_SALINITY);
    double density = Density.at(temperature, salinity);
    double dynamicViscosity = Viscosity.at(temperature, salinity);
    double vapourPressure = VapourPressure.at(temperature, salinity);
    return new Water(density, dynamicViscosity / density, vapourPressure);
  }

  private static void requireWithin(
      String quantity, double value, String unit, double lowest, double highest) {
    // Written so that a NaN is refused as well.
    if (!(value >= lowest && value <= highest)) {
      throw new IllegalArgumentException(
          quantity
              + " must be "
              + lowest
              + " to "
              + highest
              + " "
              + unit
              + ", was "
              + value
              + " "
              + unit);
    }
  }
}
