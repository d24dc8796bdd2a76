package trimwright.exchange.words;

import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.propel.DriveLimits;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.TrimPoint;

/** What a drive is short of. */
final class DriveLimitWords {
  private DriveLimitWords() {}

  /**
   * What a balance would take and what there is of it, to follow its subject; empty where the drive
   * gives it.
   *
   * @param rideCase the case
   * @param wouldNeed the balance
   */
  static String takes(RideCase rideCase, TrimPoint wouldNeed) {
    Optional<Powertrain> drive = Propulsion.find(rideCase);
    if (drive.isEmpty()) {
      return "";
    }
    DriveLimits limits = drive.get().limits();
    OptionalDouble battery = limits.batteryPower();
    double power = wouldNeed.electricPower().orElse(0);
    if (battery.isPresent() && battery.getAsDouble() < limits.power()) {
      if (power > battery.getAsDouble()) {
        return takes(power, "W, the battery gives", battery.getAsDouble(), "W");
      }
    } else if (power > limits.power()) {
      return takes(power, "W, the drive has", limits.power(), "W");
    }
    double most = limits.thrust().orElse(Double.POSITIVE_INFINITY);
    if (wouldNeed.thrust() > most) {
      return takes(wouldNeed.thrust(), "N of thrust, the drive gives", most, "N");
    }
    return drive
        .get()
        .findState(wouldNeed.thrust(), wouldNeed.speed())
        .filter(s -> s.revolutions() > limits.revolutions().orElse(Double.POSITIVE_INFINITY))
        .map(
            s ->
                takes(
                    Unit.REVOLUTION_PER_MINUTE.fromSi(s.revolutions()),
                    "rpm, the propeller turns at most",
                    Unit.REVOLUTION_PER_MINUTE.fromSi(limits.revolutions().orElseThrow()),
                    "rpm"))
        .orElse("");
  }

  private static String takes(double needed, String between, double there, String unit) {
    return "takes "
        + Shown.decimals(needed, 0)
        + " "
        + between
        + " "
        + Shown.decimals(there, 0)
        + " "
        + unit;
  }
}
