package trimwright.kernel.propel;

import trimwright.kernel.numeric.Roots;

/**
 * The ideal propeller: a disc that pushes water straight back without friction or swirl. No
 * propeller of its diameter does better.
 *
 * <p>Source: W. J. M. Rankine (1865), R. E. Froude (1889), from memory.
 */
public final class ActuatorDisc {
  /** Width of the last bracket of thrust, as a share of the greatest one [1]. */
  private static final double TOLERANCE = 1e-10;

  private ActuatorDisc() {}

  /**
   * Ideal efficiency, 2 / (1 + sqrt(1 + CT)).
   *
   * @param thrustLoading CT, thrust over dynamic pressure and disc area, 0 or more [1]
   * @return efficiency [1]
   */
  public static double idealEfficiency(double thrustLoading) {
    return 2 / (1 + Math.sqrt(1 + thrustLoading));
  }

  /**
   * Area of a disc.
   *
   * @param diameter [m]
   * @return area [m²]
   */
  public static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  /**
   * The least power that makes a thrust: thrust times the speed of the water through the disc.
   *
   * @param thrust [N], 0 or more
   * @param speed [m/s], 0 or more; at rest too
   * @param area of the disc [m²]
   * @param density of the water [kg/m³]
   * @return power [W]
   */
  public static double idealPower(double thrust, double speed, double area, double density) {
    double through = 0.5 * (speed + Math.sqrt(speed * speed + 2 * thrust / (density * area)));
    return thrust * through;
  }

  /**
   * The greatest thrust that a power makes.
   *
   * @param power [W], 0 or more
   * @param speed [m/s], 0 or more
   * @param area of the disc [m²]
   * @param density of the water [kg/m³]
   * @return thrust [N]
   */
  public static double greatestThrust(double power, double speed, double area, double density) {
    if (power <= 0) {
      return 0;
    }
    // At rest power is T^1.5 / sqrt(2 rho A); moving makes no more thrust of it.
    double atRest = Math.cbrt(2 * density * area * power * power);
    return Roots.between(
        t -> idealPower(t, speed, area, density) - power,
        0,
        -power,
        atRest,
        Math.max(0, idealPower(atRest, speed, area, density) - power),
        TOLERANCE * atRest);
  }
}
