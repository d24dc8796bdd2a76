package trimwright.kernel.water;

/**
 * Saturation vapour pressure of fresh and sea water.
 *
 * <p>Fresh water: IAPWS-IF97 region 4, equation 30, stated from 273.15 K upward; between 271.15 and
 * 273.15 K it is extrapolated over supercooled water. Sea water: Raoult's law in the form of
 * Sharqawy, Lienhard and Zubair (2010), equation 32, about 2 % lower at 35 g/kg.
 */
final class VapourPressure {
  private static final double[] N = {
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3,
  };

  private static final double PASCAL_PER_MEGAPASCAL = 1e6;

  /**
   * Molar mass of water over the mean molar mass of the particles of sea salt [1] (18.015 / 31.41),
   * as Sharqawy et al. print it.
   */
  private static final double MOLAR_MASS_RATIO = 0.57357;

  private VapourPressure() {}

  /**
   * Vapour pressure.
   *
   * @param temperature [K], ITS-90
   * @param salinity salt per mass of water [kg/kg]
   * @return vapour pressure [Pa]
   */
  static double at(double temperature, double salinity) {
    double theta = temperature + N[8] / (temperature - N[9]);
    double a = theta * theta + N[0] * theta + N[1];
    double b = N[2] * theta * theta + N[3] * theta + N[4];
    double c = N[5] * theta * theta + N[6] * theta + N[7];
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    double fresh = root * root * root * root * PASCAL_PER_MEGAPASCAL;
    return fresh / (1 + MOLAR_MASS_RATIO * salinity / (1 - salinity));
  }
}
