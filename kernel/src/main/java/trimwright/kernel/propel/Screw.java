package trimwright.kernel.propel;

import trimwright.kernel.numeric.Roots;
import trimwright.kernel.water.Water;

/**
 * A propeller of a size in a water.
 *
 * @param openWater its coefficients
 * @param diameter [m]
 * @param water the water
 */
public record Screw(OpenWater openWater, double diameter, Water water) {
  /** Width of the last bracket of revolutions, as a share [1]. */
  private static final double TOLERANCE = 1e-9;

  private static final int MOST_DOUBLINGS = 60;

  /** Where on the radius a blade's Reynolds number is counted [1]. */
  private static final double BLADE = 0.75;

  /**
   * Thrust.
   *
   * @param revolutions [1/s], above 0
   * @param speed [m/s], 0 or more
   * @return thrust [N]; negative where the water turns the propeller
   */
  public double thrust(double revolutions, double speed) {
    double head = water.density() * revolutions * revolutions * squared(diameter * diameter);
    return head
        * openWater.thrustCoefficient(advance(revolutions, speed), reynolds(revolutions, speed));
  }

  /**
   * Torque on the shaft.
   *
   * @param revolutions [1/s], above 0
   * @param speed [m/s], 0 or more
   * @return torque [N·m]
   */
  public double torque(double revolutions, double speed) {
    double head =
        water.density() * revolutions * revolutions * squared(diameter * diameter) * diameter;
    return head
        * openWater.torqueCoefficient(advance(revolutions, speed), reynolds(revolutions, speed));
  }

  /**
   * Advance ratio.
   *
   * @param revolutions [1/s], above 0
   * @param speed [m/s]
   * @return J [1]
   */
  public double advance(double revolutions, double speed) {
    return speed / (revolutions * diameter);
  }

  /**
   * The revolutions below which there is no thrust.
   *
   * @param speed [m/s]
   * @return [1/s]
   */
  public double idling(double speed) {
    return speed / (openWater.noThrustAdvance() * diameter);
  }

  /**
   * The revolutions that make a thrust.
   *
   * @param thrust [N], above 0
   * @param speed [m/s], 0 or more
   * @return [1/s]
   */
  public double revolutions(double thrust, double speed) {
    double unit = water.density() * squared(diameter * diameter);
    double low = idling(speed);
    double step = Math.sqrt(thrust / (unit * openWater.thrustCoefficient(0, 1 / TOLERANCE)));
    double high = low + step;
    double atHigh = thrust(high, speed) - thrust;
    for (int i = 0; i < MOST_DOUBLINGS && atHigh < 0; i++) {
      low = high;
      high += step;
      step *= 2;
      atHigh = thrust(high, speed) - thrust;
    }
    double atLow = low > 0 ? Math.min(0, thrust(low, speed) - thrust) : -thrust;
    return Roots.between(
        n -> n > 0 ? thrust(n, speed) - thrust : -thrust,
        low,
        atLow,
        high,
        Math.max(0, atHigh),
        TOLERANCE * high);
  }

  private double reynolds(double revolutions, double speed) {
    double turning = BLADE * Math.PI * revolutions * diameter;
    return Math.sqrt(squared(speed) + squared(turning)) * diameter / water.kinematicViscosity();
  }

  private static double squared(double x) {
    return x * x;
  }
}
