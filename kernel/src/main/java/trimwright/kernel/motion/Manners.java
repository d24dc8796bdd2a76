package trimwright.kernel.motion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a case behaves about its trim at one speed.
 *
 * @param speed [m/s]
 * @param modes of a rider who keeps upright and presses where that asks for, the fastest growing
 *     first
 * @param hold what it takes to hold it
 * @param peakPitchRate largest pitch rate within half a second of a step of foot pressure by a
 *     centimetre, throttle left alone [rad/s]: pitchy where large
 * @param lockedIn time until the height has changed by ten centimetres after such a step that
 *     nobody noticed [s]; empty where it has not after {@link #LONGEST}
 * @param chop how it answers to the case's chop; empty on flat water
 */
public record Manners(
    double speed,
    List<Mode> modes,
    Hold hold,
    double peakPitchRate,
    OptionalDouble lockedIn,
    Optional<ChopAnswer> chop) {
  /** Time in which a rider answers [s], as the product's contract has it. */
  public static final double DELAY = 0.25;

  /** The step of foot pressure [m]. */
  public static final double STEP = 0.01;

  /** Time in which the pitch rate is looked at [s]. */
  public static final double WITHIN = 0.5;

  /** Change of height that is noticed [m]. */
  public static final double HEIGHT = 0.1;

  /** Nothing is looked for later [s]. */
  public static final double LONGEST = 30;

  /** Copies the list. */
  public Manners {
    modes = List.copyOf(modes);
  }

  static Manners of(MotionModel model, MotionTrim trim) {
    SmallMotion small = new SmallMotion(model, trim, false);
    return new Manners(
        trim.speed(),
        small.modes(),
        small.hold(DELAY),
        small.peakPitchRate(STEP, WITHIN),
        small.timeToHeight(STEP, HEIGHT, LONGEST),
        ChopStudy.find(model, trim, small));
  }
}
