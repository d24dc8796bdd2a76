package trimwright.kernel.fall;

import java.util.OptionalDouble;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionTrace;

/**
 * The breach margin: the weight goes to the back foot at the permitted power.
 *
 * @param time until a wing or the propeller breaks the surface [s]; empty if neither does in the
 *     time looked at
 * @param end how the motion ended
 * @param trace the motion
 */
public record Breach(OptionalDouble time, MotionEnd end, MotionTrace trace) {

  /** The time, infinite where nothing broke the surface [s]. */
  public double margin() {
    return time.orElse(Double.POSITIVE_INFINITY);
  }
}
