package trimwright.kernel.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

/**
 * Bending of one part at its root in four load cases, against the maker's rating where the case
 * gives one. Without a rating there is no verdict.
 *
 * @param straight the straight ride at the wished speed [N·m]
 * @param turn the tightest turn inside the limits at that speed [N·m]; empty where there is none
 * @param landing the straight ride with the load of a landing [N·m]
 * @param fall a fall off the board's edge [N·m]; the mast alone
 * @param rating the maker's [N·m], where given
 */
public record PartLoads(
    double straight,
    OptionalDouble turn,
    double landing,
    OptionalDouble fall,
    OptionalDouble rating) {
  /** The largest of the four [N·m]. */
  public double most() {
    return Math.max(Math.max(straight, turn.orElse(0)), Math.max(landing, fall.orElse(0)));
  }

  /**
   * Whether the largest goes beyond the permitted share of the rating.
   *
   * @param limits the limits
   * @return empty where no rating is given
   */
  public Optional<Boolean> exceeds(RideLimits limits) {
    return rating.isPresent()
        ? Optional.of(limits.breaks(RideLimit.RATING_SHARE, most() / rating.getAsDouble()))
        : Optional.empty();
  }
}
