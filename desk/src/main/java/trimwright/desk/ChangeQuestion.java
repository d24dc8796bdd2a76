package trimwright.desk;

import java.util.Map;
import java.util.Objects;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.wish.Wish;

/**
 * What somebody wants to change for.
 *
 * @param span speeds that the rider rides
 * @param feetReach how far both feet, or the mast in its track, may be moved either way [m]
 * @param weights of wishes that are not those of the kind of riding, 0 to 4
 */
public record ChangeQuestion(RideSpan span, double feetReach, Map<Wish, Integer> weights) {
  /** Copies the map. */
  public ChangeQuestion {
    Objects.requireNonNull(span, "span");
    weights = Map.copyOf(weights);
  }

  /**
   * The usual question.
   *
   * @param wishedSpeed of the rider [m/s]
   */
  public static ChangeQuestion usual(double wishedSpeed) {
    return new ChangeQuestion(RideSpan.about(wishedSpeed), RideAsked.USUAL_REACH, Map.of());
  }
}
