package trimwright.exchange.words;

import trimwright.exchange.unit.Measures;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;

/**
 * Why a wish is wished, from where on it counts as poor, and how much it weighs, in words. What is
 * good and poor was chosen by judgement, as docs/wishes.md says; no publication sets it.
 */
public final class WishReasons {
  private static final String[] WEIGHTS = {"not at all", "a little", "somewhat", "much", "most"};

  private WishReasons() {}

  /** Why it is wished. */
  public static String why(Wish wish) {
    return switch (wish) {
      case LEVEL -> "A degree is felt in the ankles; three look wrong from the shore.";
      case FEET -> "A tenth of the load on the wrong leg tires it; a fiftieth nobody feels.";
      case GROWTH -> "Who rides a little faster should not have to lean again.";
      case TAKE_OFF -> "Long runs on the water tire beginners and eat the battery.";
      case STALL -> "Chop, a pull at the throttle and a clumsy foot take some degrees each.";
      case MANNERS -> "Too quick frightens, too slow is dull.";
      case TURN -> "A tip that comes out ends the turn.";
      case RANGE -> "An hour on the water is what people pay for.";
      case GEAR_MASS -> "It has to be turned, and carried to the water.";
      case FEET_MOVED -> "A foot's width is a new stance.";
    };
  }

  /** From where on a value counts as poor, such as {@code from 22.0 km/h on}. */
  public static String poor(Wish wish, Grade grade, Measures measures) {
    double below = grade.from() - grade.poor();
    String above = WishWords.text(wish, grade.to() + grade.poor(), measures);
    if (Double.isInfinite(grade.from())) {
      return "from " + above + " on";
    }
    if (Double.isInfinite(grade.to())) {
      return WishWords.text(wish, Math.max(0, below), measures) + " and less";
    }
    return below > 0
        ? WishWords.text(wish, below, measures) + " and less, or from " + above + " on"
        : "from " + above + " on";
  }

  /**
   * How much a weight is.
   *
   * @param weight 0 to 4
   */
  public static String weight(int weight) {
    return WEIGHTS[Math.max(0, Math.min(Wishes.MOST_WEIGHT, weight))];
  }
}
