package trimwright.kernel.propel;

import java.util.Optional;

/**
 * A drive of which no propeller is known: an efficiency that was given, or a share of the ideal
 * disc's.
 */
public final class DiscPowertrain implements Powertrain {
  /**
   * Share of the ideal disc's efficiency that propeller, motor and controller reach together where
   * nothing is given: about 0.75 of the ideal for a small propeller and 0.8 for motor and
   * controller. Common practice, no source.
   */
  private static final double REAL_OVER_IDEAL = 0.6;

  /**
   * Share of the ideal disc's efficiency that no drive of this kind passes: a given efficiency
   * holds for riding, and at rest, where thrust costs power without any speed, this takes its
   * place. Chosen, no source.
   */
  private static final double BEST_OVER_IDEAL = 0.7;

  private final double efficiency;
  private final double share;
  private final double area;
  private final double density;
  private final DriveLimits limits;

  private DiscPowertrain(
      double efficiency, double share, double diameter, double density, DriveLimits limits) {
    this.efficiency = efficiency;
    this.share = share;
    this.area = ActuatorDisc.area(diameter);
    this.density = density;
    this.limits = limits;
  }

  /**
   * A drive with an efficiency that was given.
   *
   * @param efficiency thrust power over electric power [1]
   * @param diameter of the propeller [m]
   * @param density of the water [kg/m³]
   * @param limits what it may be asked for
   */
  public static DiscPowertrain given(
      double efficiency, double diameter, double density, DriveLimits limits) {
    return new DiscPowertrain(efficiency, BEST_OVER_IDEAL, diameter, density, limits);
  }

  /**
   * A drive whose efficiency is estimated.
   *
   * @param motor efficiency of motor and controller [1]
   * @param diameter of the propeller [m]
   * @param density of the water [kg/m³]
   * @param limits what it may be asked for
   */
  public static DiscPowertrain estimated(
      double motor, double diameter, double density, DriveLimits limits) {
    double share = REAL_OVER_IDEAL * (motor / Electrics.CHOSEN_EFFICIENCY);
    return new DiscPowertrain(0, share, diameter, density, limits);
  }

  @Override
  public double electricPower(double thrust, double speed) {
    if (thrust <= 0) {
      return 0;
    }
    if (efficiency > 0) {
      return thrust * speed / efficiency;
    }
    double pressure = 0.5 * density * speed * speed;
    double ideal = ActuatorDisc.idealEfficiency(thrust / (pressure * area));
    return thrust * speed / (share * ideal);
  }

  @Override
  public boolean gives(double thrust, double speed) {
    return electricPower(thrust, speed) <= limits.leastPower()
        && thrust <= limits.thrust().orElse(Double.POSITIVE_INFINITY);
  }

  @Override
  public double slack(double thrust, double speed) {
    double least = 1 - electricPower(thrust, speed) / limits.leastPower();
    return limits.thrust().isPresent()
        ? Math.min(least, 1 - thrust / limits.thrust().getAsDouble())
        : least;
  }

  @Override
  public GreatestThrust greatestThrust(double speed) {
    double power = limits.leastPower();
    double most = ActuatorDisc.greatestThrust(share * power, speed, area, density);
    if (efficiency > 0 && speed > 0) {
      most = Math.min(most, power * efficiency / speed);
    }
    if (limits.thrust().isPresent() && limits.thrust().getAsDouble() < most) {
      double thrust = limits.thrust().getAsDouble();
      double ideal = ActuatorDisc.idealPower(thrust, speed, area, density) / share;
      double takes = efficiency > 0 ? Math.max(ideal, thrust * speed / efficiency) : ideal;
      return new GreatestThrust(speed, thrust, takes, ThrustLimit.MAKER);
    }
    return new GreatestThrust(speed, most, power, limits.powerLimit());
  }

  @Override
  public Optional<ScrewState> findState(double thrust, double speed) {
    return Optional.empty();
  }

  @Override
  public double heldThrust(double thrust, double speed, double other) {
    return thrust <= 0
        ? 0
        : ActuatorDisc.greatestThrust(
            ActuatorDisc.idealPower(thrust, speed, area, density), other, area, density);
  }

  @Override
  public PowerBasis basis() {
    return efficiency > 0 ? PowerBasis.GIVEN_EFFICIENCY : PowerBasis.ESTIMATED;
  }

  @Override
  public DriveLimits limits() {
    return limits;
  }
}
