package trimwright.kernel.propel;

import java.util.OptionalDouble;

/**
 * What a drive may be asked for.
 *
 * @param power most electric power [W]
 * @param batteryPower most power that the battery gives [W], where its current is limited
 * @param thrust greatest thrust [N], where the maker gives one
 * @param revolutions of the propeller at most [1/s], where they are given
 */
public record DriveLimits(
    double power, OptionalDouble batteryPower, OptionalDouble thrust, OptionalDouble revolutions) {

  /** The lower of the two limits of power [W]. */
  double leastPower() {
    return Math.min(power, batteryPower.orElse(power));
  }

  /** Which of the two limits of power is the lower. */
  ThrustLimit powerLimit() {
    return batteryPower.isPresent() && batteryPower.getAsDouble() < power
        ? ThrustLimit.BATTERY
        : ThrustLimit.POWER;
  }
}
