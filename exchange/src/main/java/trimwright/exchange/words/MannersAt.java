package trimwright.exchange.words;

import java.util.Optional;
import trimwright.kernel.motion.Hold;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode;
import trimwright.kernel.trim.TrimOutcome;

/**
 * How a case behaves at one speed, beside its trim there.
 *
 * @param outcome the trim, or why there is none
 * @param manners about the trim; empty where there is none
 */
public record MannersAt(TrimOutcome outcome, Optional<Manners> manners) {

  /** Whether it is inside every limit. */
  public boolean rideable() {
    return outcome.findPoint().filter(p -> p.brokenLimits().isEmpty()).isPresent();
  }

  /**
   * What grows fastest.
   *
   * @param manners of a case at a speed
   * @return the mode; empty where nothing grows that counts
   */
  public static Optional<Mode> growing(Manners manners) {
    return manners.hold() == Hold.STEADY ? Optional.empty() : manners.modes().stream().findFirst();
  }

  /**
   * The swing that takes longest to die away, measured by its own swings.
   *
   * @param manners of a case at a speed
   * @return the mode; empty where nothing swings
   */
  public static Optional<Mode> swing(Manners manners) {
    Mode least = null;
    for (Mode mode : manners.modes()) {
      if (mode.period().isPresent()
          && (least == null || mode.dampingRatio() < least.dampingRatio())) {
        least = mode;
      }
    }
    return Optional.ofNullable(least);
  }
}
