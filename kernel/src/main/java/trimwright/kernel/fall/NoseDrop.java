package trimwright.kernel.fall;

import java.util.OptionalDouble;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionTrace;

/**
 * The nose-drop margin: the weight goes to the front foot while the throttle goes to nothing.
 *
 * @param lowestPitch lowest pitch of the deck up to the first contact of the board with the water,
 *     or up to the end of the time looked at, nose up positive [rad]
 * @param bowClearance least height of the bow above the water till then [m]; 0 where it touched
 * @param contact when the board met the water [s]; empty if it did not
 * @param bowFirst whether the bow met it, not the stern
 * @param trace the motion
 */
public record NoseDrop(
    double lowestPitch,
    double bowClearance,
    OptionalDouble contact,
    boolean bowFirst,
    MotionTrace trace) {

  /**
   * How long the bow stays clear [s]; infinite where it did not touch in the time looked at, or the
   * stern touched first. Where the motion went beyond the model only the time that was followed.
   */
  public double bowClearFor() {
    if (trace.end() == MotionEnd.LIMIT_OF_MODEL) {
      return trace.last().time();
    }
    return contact.isPresent() && bowFirst ? contact.getAsDouble() : Double.POSITIVE_INFINITY;
  }
}
