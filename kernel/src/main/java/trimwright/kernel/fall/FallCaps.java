package trimwright.kernel.fall;

import java.util.OptionalDouble;
import trimwright.kernel.hull.Posture;

/**
 * Settings of the remote with which a posture lies inside the limits of first flights at every
 * rideable speed up to a cap.
 *
 * @param posture of the rider
 * @param speed cap on the speed [m/s]
 * @param whole whether that is the fastest rideable speed, so that no cap on it is needed
 * @param ramp least time in which the throttle goes from full to nothing and back [s]
 * @param power cap on the electric power [W]; empty without a drive, or where what it has will do
 */
public record FallCaps(
    Posture posture, double speed, boolean whole, double ramp, OptionalDouble power) {
  /** Slowest ramp that is tried [s]. Chosen: slower a throttle hardly obeys. */
  public static final double SLOWEST_RAMP = 3;

  /** A rider needs this much more power than the level ride takes [1]. Chosen. */
  public static final double SPARE_POWER = 1.1;
}
