package trimwright.desk;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.match.MatchSearch;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.water.Water;

/**
 * What somebody wants to know of a stock for a rider.
 *
 * @param span speeds that the rider rides
 * @param feetReach how far both feet may be moved, either way [m]
 * @param weights of wishes that are not those of the kind of riding, 0 to 4
 * @param one first wish of the trade-off
 * @param other second
 * @param waters other waters of the rider
 * @param weightSpread by how much the rider may be heavier or lighter [kg]; 0 for not at all
 * @param size how much is shown and looked at
 */
public record MatchQuestion(
    RideSpan span,
    double feetReach,
    Map<Wish, Integer> weights,
    Wish one,
    Wish other,
    List<OtherWater> waters,
    double weightSpread,
    MatchSearch.Size size) {
  /** By how much riders weigh more or less than they say, with wet kit and after lunch. Chosen. */
  public static final double USUAL_WEIGHT_SPREAD = 5;

  /** Copies the collections. */
  public MatchQuestion {
    Objects.requireNonNull(span, "span");
    weights = Map.copyOf(weights);
    waters = List.copyOf(waters);
    if (one == other || one == Wish.MANNERS || other == Wish.MANNERS) {
      throw new IllegalArgumentException(
          "a trade-off is between two wishes that tables know, were " + one + " and " + other);
    }
  }

  /**
   * Another water of the rider.
   *
   * @param name what people call it
   * @param water the water
   * @param temperature [K]
   */
  public record OtherWater(String name, Water water, double temperature) {}

  /**
   * The usual question.
   *
   * @param wishedSpeed of the rider [m/s]
   */
  public static MatchQuestion usual(double wishedSpeed) {
    return new MatchQuestion(
        RideSpan.about(wishedSpeed),
        RideAsked.USUAL_REACH,
        Map.of(),
        Wish.TAKE_OFF,
        Wish.RANGE,
        List.of(),
        USUAL_WEIGHT_SPREAD,
        MatchSearch.Size.USUAL);
  }
}
