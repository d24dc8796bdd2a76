package trimwright.kernel.water;

/**
 * Density of fresh and sea water at one atmosphere, EOS-80.
 *
 * <p>Source: Millero and Poisson, Deep-Sea Research 28A (1981) 625-629; UNESCO Technical Papers in
 * Marine Science 44 (1983). Stated for practical salinity 0 to 42 and -2 to 40 °C, standard error
 * 0.0036 kg/m³. The equation is written in degrees Celsius of the scale IPTS-68; both conversions
 * happen at this door.
 */
final class Density {
  private static final double ZERO_CELSIUS = 273.15;

  /** Saunders 1990: t68 = 1.00024 t90 in the range of the oceans. */
  private static final double IPTS68_PER_ITS90 = 1.00024;

  /**
   * Reference salinity of standard sea water [kg/kg] for practical salinity 1: 35.16504 g/kg
   * belongs to practical salinity 35 (Millero et al. 2008).
   */
  private static final double SALINITY_PER_PRACTICAL_SALINITY = 35.16504e-3 / 35;

  private Density() {}

  /**
   * Density at one atmosphere.
   *
   * @param temperature [K], ITS-90
   * @param salinity salt per mass of water [kg/kg]
   * @return density [kg/m³]
   */
  static double at(double temperature, double salinity) {
    return ofPracticalSalinity(
        IPTS68_PER_ITS90 * (temperature - ZERO_CELSIUS),
        salinity / SALINITY_PER_PRACTICAL_SALINITY);
  }

  /**
   * EOS-80 in its own variables.
   *
   * @param t temperature in degrees Celsius of IPTS-68
   * @param s practical salinity (PSS-78) [1]
   * @return density [kg/m³]
   */
  static double ofPracticalSalinity(double t, double s) {
    double pure =
        999.842594
            + t
                * (6.793952e-2
                    + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    double a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    double b = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
    double c = 4.8314e-4;
    return pure + s * (a + b * Math.sqrt(s) + c * s);
  }
}
