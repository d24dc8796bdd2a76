package trimwright.kernel.rig;

import trimwright.kernel.water.Water;

/** From thrust to electric power, as far as no ride and no propeller curve has told better. */
public final class Propulsion {
  /**
   * Share of the ideal disc's efficiency that propeller, motor and controller reach together: about
   * 0.75 of the ideal for a small propeller and 0.8 for motor and controller. Common practice, no
   * source.
   */
  private static final double REAL_OVER_IDEAL = 0.6;

  private Propulsion() {}

  /**
   * Ideal efficiency of a thrusting disc, 2 / (1 + sqrt(1 + CT)) (W. J. M. Rankine 1865, R. E.
   * Froude 1889, from memory).
   *
   * @param thrustLoading CT, thrust over dynamic pressure and disc area, 0 or more [1]
   * @return efficiency [1]
   */
  public static double idealEfficiency(double thrustLoading) {
    return 2 / (1 + Math.sqrt(1 + thrustLoading));
  }

  /**
   * Electric power for a thrust.
   *
   * @param drive the drive
   * @param thrust [N]; negative thrust costs nothing here
   * @param speed [m/s]
   * @param water the water
   * @return power [W]
   */
  public static double electricPower(Drive drive, double thrust, double speed, Water water) {
    if (thrust <= 0) {
      return 0;
    }
    return thrust * speed / efficiency(drive, thrust, speed, water);
  }

  private static double efficiency(Drive drive, double thrust, double speed, Water water) {
    if (drive.efficiency() > 0) {
      return drive.efficiency();
    }
    double disc = Math.PI / 4 * drive.propellerDiameter() * drive.propellerDiameter();
    double pressure = 0.5 * water.density() * speed * speed;
    return REAL_OVER_IDEAL * idealEfficiency(thrust / (pressure * disc));
  }
}
