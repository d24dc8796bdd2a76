package trimwright.kernel.propel;

import java.util.Optional;

/** A drive in its water: from thrust to electric power and back. Immutable. */
public sealed interface Powertrain permits DiscPowertrain, ScrewPowertrain {
  /**
   * Electric power for a thrust.
   *
   * @param thrust [N]; nothing is counted for a negative one
   * @param speed [m/s], above 0
   * @return power [W]
   */
  double electricPower(double thrust, double speed);

  /**
   * Whether the drive gives a thrust within all its limits.
   *
   * @param thrust [N]
   * @param speed [m/s], above 0
   */
  boolean gives(double thrust, double speed);

  /**
   * How far inside all its limits it gives a thrust: the least of 1 less the used share of each;
   * negative outside, continuous over thrust and speed.
   *
   * @param thrust [N]
   * @param speed [m/s], above 0
   * @return [1]
   */
  double slack(double thrust, double speed);

  /**
   * The most it pushes.
   *
   * @param speed [m/s], 0 or more; at rest too
   * @return thrust and what it ends at
   */
  GreatestThrust greatestThrust(double speed);

  /**
   * How the propeller runs for a thrust.
   *
   * @param thrust [N]
   * @param speed [m/s], 0 or more
   * @return empty where no propeller is known, or nothing is pushed
   */
  Optional<ScrewState> findState(double thrust, double speed);

  /**
   * The thrust at another speed with the throttle left alone: at the same revolutions where the
   * propeller is known, at the same power of the ideal disc otherwise.
   *
   * @param thrust before [N]
   * @param speed before [m/s], above 0
   * @param other speed [m/s], above 0
   * @return thrust at the other speed [N]; none where there was none
   */
  double heldThrust(double thrust, double speed, double other);

  /** What its power is computed from. */
  PowerBasis basis();

  /** Its limits. */
  DriveLimits limits();
}
