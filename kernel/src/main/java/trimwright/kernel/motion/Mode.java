package trimwright.kernel.motion;

import java.util.OptionalDouble;

/**
 * One way in which a craft moves about its trim by itself.
 *
 * @param growth rate of growth, negative where it dies away [1/s]
 * @param frequency [rad/s]; 0 where it does not swing
 * @param mainly what of it moves most, by energy
 */
public record Mode(double growth, double frequency, Mainly mainly) {
  /** What moves. */
  public enum Mainly {
    /** The speed. */
    SPEED,
    /** The height. */
    HEIGHT,
    /** The pitch. */
    PITCH
  }

  /** Time of one swing [s]; empty where it does not swing. */
  public OptionalDouble period() {
    return frequency > 0 ? OptionalDouble.of(2 * Math.PI / frequency) : OptionalDouble.empty();
  }

  /** Damping over critical damping; 1 or more without swing is not told apart [1]. */
  public double dampingRatio() {
    return -growth / Math.hypot(growth, frequency);
  }

  /** Time in which it doubles [s]; empty where it does not grow. */
  public OptionalDouble timeToDouble() {
    return growth > 0 ? OptionalDouble.of(Math.log(2) / growth) : OptionalDouble.empty();
  }

  /** Time in which it halves [s]; empty where it does not die away. */
  public OptionalDouble timeToHalf() {
    return growth < 0 ? OptionalDouble.of(-Math.log(2) / growth) : OptionalDouble.empty();
  }
}
