package trimwright.kernel.fall;

import java.util.OptionalDouble;
import trimwright.kernel.propel.GreatestThrust;
import trimwright.kernel.propel.Powertrain;

/**
 * What a remote lets a rider do with the drive.
 *
 * @param ramp time in which the throttle goes from full to nothing or back [s]
 * @param mostPower electric power that is permitted [W]; empty for what the drive has
 */
public record FallDrive(double ramp, OptionalDouble mostPower) {
  /**
   * Ramp taken where a case says none: as quick as a rider's weight goes to one foot. Chosen, no
   * source [s].
   */
  public static final double USUAL_RAMP = 0.3;

  private static final int HALVINGS = 40;

  /**
   * The greatest thrust within the permitted power.
   *
   * @param drive the drive
   * @param speed [m/s]
   * @return [N]
   */
  double greatestThrust(Powertrain drive, double speed) {
    GreatestThrust all = drive.greatestThrust(speed);
    if (mostPower.isEmpty() || all.electricPower() <= mostPower.getAsDouble()) {
      return all.thrust();
    }
    double low = 0;
    double high = all.thrust();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (drive.electricPower(middle, speed) > mostPower.getAsDouble()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }
}
