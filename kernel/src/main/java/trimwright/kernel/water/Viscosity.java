package trimwright.kernel.water;

/**
 * Dynamic viscosity of fresh and sea water.
 *
 * <p>Fresh water: IAPWS R12-08 (2008), equations 10 to 12 with its tables 1 and 2, without the
 * critical enhancement (which is below 1 part in 10^5 here). Uncertainty 1 % or better; below 0 °C
 * it is extrapolated. Sea water: the ratio of sea to fresh water of Sharqawy, Lienhard and Zubair
 * (2010), equation 22, stated for 0 to 180 °C and 0 to 150 g/kg, 1.5 %. At 0 °C and 35 g/kg it lies
 * 1.4 % above the older table of ITTC 1963, from 5 to 30 °C within 1 %.
 */
final class Viscosity {
  private static final double REFERENCE_TEMPERATURE = 647.096;
  private static final double REFERENCE_DENSITY = 322.0;
  private static final double REFERENCE_VISCOSITY = 1e-6;
  private static final double ZERO_CELSIUS = 273.15;

  /** R12-08 table 1. */
  private static final double[] DILUTE = {1.67752, 2.20462, 0.6366564, -0.241605};

  /** R12-08 table 2, H_ij: row i is the power of (1/T - 1), column j that of (density - 1). */
  private static final double[][] FINITE_DENSITY = {
    {0.520094, 0.222531, -0.281378, 0.161913, -0.0325372, 0, 0},
    {0.0850895, 0.999115, -0.906851, 0.257399, 0, 0, 0},
    {-1.08374, 1.88797, -0.772479, 0, 0, 0, 0},
    {-0.289555, 1.26613, -0.489837, 0, 0.0698452, 0, -0.00435673},
    {0, 0, -0.257040, 0, 0, 0.00872102, 0},
    {0, 0.120573, 0, 0, 0, 0, -0.000593264},
  };

  private Viscosity() {}

  /**
   * Dynamic viscosity at one atmosphere.
   *
   * @param temperature [K], ITS-90
   * @param salinity salt per mass of water [kg/kg]
   * @return dynamic viscosity [Pa·s]
   */
  static double at(double temperature, double salinity) {
    return ofFreshWater(temperature, Density.at(temperature, 0))
        * saltFactor(temperature, salinity);
  }

  /**
   * IAPWS R12-08 without critical enhancement.
   *
   * @param temperature [K]
   * @param density [kg/m³]
   * @return dynamic viscosity [Pa·s]
   */
  static double ofFreshWater(double temperature, double density) {
    double t = temperature / REFERENCE_TEMPERATURE;
    double inverse = 1 / t;
    double dilute =
        100
            * Math.sqrt(t)
            / (DILUTE[0] + inverse * (DILUTE[1] + inverse * (DILUTE[2] + inverse * DILUTE[3])));
    double relative = density / REFERENCE_DENSITY;
    double sum = 0;
    for (int i = FINITE_DENSITY.length - 1; i >= 0; i--) {
      double inner = 0;
      for (int j = FINITE_DENSITY[i].length - 1; j >= 0; j--) {
        inner = inner * (relative - 1) + FINITE_DENSITY[i][j];
      }
      sum = sum * (inverse - 1) + inner;
    }
    return dilute * Math.exp(relative * sum) * REFERENCE_VISCOSITY;
  }

  /**
   * Viscosity of sea water over that of fresh water, Sharqawy et al. (2010) equation 22 (t in
   * degrees Celsius).
   *
   * @param temperature [K]
   * @param s salt per mass of water [kg/kg]
   * @return ratio [1]
   */
  private static double saltFactor(double temperature, double s) {
    double t = temperature - ZERO_CELSIUS;
    double a = 1.5409136040 + t * (1.9981117208e-2 + t * -9.5203865864e-5);
    double b = 7.9739318223 + t * (-7.5614568881e-2 + t * 4.7237011074e-4);
    return 1 + s * (a + b * s);
  }
}
