package trimwright.kernel.propel;

import java.util.Optional;
import trimwright.kernel.numeric.Roots;

/** A drive whose propeller is known. */
public final class ScrewPowertrain implements Powertrain {
  /** Width of the last bracket of revolutions, as a share [1]. */
  private static final double TOLERANCE = 1e-8;

  private static final int SAMPLES = 40;

  private static final int MOST_DOUBLINGS = 60;

  private final Screw screw;
  private final Electrics electrics;
  private final DriveLimits limits;
  private final PowerBasis basis;

  private ScrewPowertrain(Screw screw, Electrics electrics, DriveLimits limits, PowerBasis basis) {
    this.screw = screw;
    this.electrics = electrics;
    this.limits = limits;
    this.basis = basis;
  }

  /**
   * A drive. The motor's rated point is where the propeller takes the drive's full power at the
   * advance ratio of its best efficiency.
   *
   * @param screw the propeller
   * @param motor efficiency of motor and controller at the rated point [1]
   * @param limits what it may be asked for
   */
  public static ScrewPowertrain of(Screw screw, double motor, DriveLimits limits) {
    double best = 0;
    double atBest = 0;
    for (int i = 1; i < SAMPLES; i++) {
      double advance = screw.openWater().noThrustAdvance() * i / SAMPLES;
      double efficiency = advance * thrust(screw, advance) / torque(screw, advance);
      if (efficiency > best) {
        best = efficiency;
        atBest = advance;
      }
    }
    double d = screw.diameter();
    double coefficient = torque(screw, atBest);
    double unit = screw.water().density() * d * d * d * d * d * coefficient;
    double revolutions = Math.cbrt(limits.power() * motor / (2 * Math.PI * unit));
    Electrics electrics = new Electrics(motor, unit * revolutions * revolutions, revolutions);
    PowerBasis basis =
        screw.openWater() instanceof MeasuredPropeller ? PowerBasis.OPEN_WATER : PowerBasis.SERIES;
    return new ScrewPowertrain(screw, electrics, limits, basis);
  }

  /** Large enough a Reynolds number that the rated point depends on the propeller alone. */
  private static double thrust(Screw screw, double advance) {
    return screw.openWater().thrustCoefficient(advance, Double.MAX_VALUE);
  }

  private static double torque(Screw screw, double advance) {
    return screw.openWater().torqueCoefficient(advance, Double.MAX_VALUE);
  }

  @Override
  public double electricPower(double thrust, double speed) {
    return thrust <= 0 ? 0 : powerAt(screw.revolutions(thrust, speed), speed);
  }

  private double powerAt(double revolutions, double speed) {
    return electrics.electricPower(screw.torque(revolutions, speed), revolutions);
  }

  @Override
  public boolean gives(double thrust, double speed) {
    return slack(thrust, speed) >= 0;
  }

  @Override
  public double slack(double thrust, double speed) {
    if (thrust <= 0) {
      return 1;
    }
    double revolutions = screw.revolutions(thrust, speed);
    double least = 1 - powerAt(revolutions, speed) / limits.leastPower();
    if (limits.revolutions().isPresent()) {
      least = Math.min(least, 1 - revolutions / limits.revolutions().getAsDouble());
    }
    return limits.thrust().isPresent()
        ? Math.min(least, 1 - thrust / limits.thrust().getAsDouble())
        : least;
  }

  @Override
  public GreatestThrust greatestThrust(double speed) {
    double idling = screw.idling(speed);
    double revolutions = withPower(speed, idling);
    ThrustLimit limit = limits.powerLimit();
    if (limits.revolutions().isPresent() && limits.revolutions().getAsDouble() < revolutions) {
      revolutions = limits.revolutions().getAsDouble();
      limit = ThrustLimit.REVOLUTIONS;
    }
    double thrust = revolutions > idling ? Math.max(0, screw.thrust(revolutions, speed)) : 0;
    if (thrust > limits.thrust().orElse(Double.POSITIVE_INFINITY)) {
      double most = limits.thrust().getAsDouble();
      return new GreatestThrust(speed, most, electricPower(most, speed), ThrustLimit.MAKER);
    }
    double power = thrust > 0 ? powerAt(revolutions, speed) : 0;
    return new GreatestThrust(speed, thrust, power, limit);
  }

  /** The revolutions that take all the power, from those without thrust up. */
  private double withPower(double speed, double idling) {
    double power = limits.leastPower();
    double low = idling;
    double atLow = low > 0 ? powerAt(low, speed) - power : -power;
    if (atLow >= 0) {
      return low;
    }
    double high = Math.max(low, electrics.ratedRevolutions());
    double atHigh = powerAt(high, speed) - power;
    for (int i = 0; i < MOST_DOUBLINGS && atHigh < 0; i++) {
      high *= 2;
      atHigh = powerAt(high, speed) - power;
    }
    return Roots.between(
        n -> (n > 0 ? powerAt(n, speed) : 0) - power,
        low,
        atLow,
        high,
        Math.max(0, atHigh),
        TOLERANCE * high);
  }

  @Override
  public Optional<ScrewState> findState(double thrust, double speed) {
    if (thrust <= 0) {
      return Optional.empty();
    }
    double n = screw.revolutions(thrust, speed);
    double torque = screw.torque(n, speed);
    double shaft = 2 * Math.PI * n * torque;
    double electric = electrics.electricPower(torque, n);
    double advance = screw.advance(n, speed);
    return Optional.of(
        new ScrewState(
            n,
            advance,
            torque,
            shaft,
            electric,
            thrust * speed / shaft,
            shaft / electric,
            screw.openWater().covers(advance)));
  }

  @Override
  public double heldThrust(double thrust, double speed, double other) {
    return thrust <= 0 ? 0 : screw.thrust(screw.revolutions(thrust, speed), other);
  }

  @Override
  public PowerBasis basis() {
    return basis;
  }

  @Override
  public DriveLimits limits() {
    return limits;
  }
}
