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

  /**
   * The time [s]; infinite where nothing broke the surface in all the time looked at. Where the
   * motion could not be followed that far because it went beyond the model, only the time that was
   * followed: what came after is not known.
   */
  public double margin() {
    return time.orElse(end == MotionEnd.RAN_OUT ? Double.POSITIVE_INFINITY : trace.last().time());
  }
}
