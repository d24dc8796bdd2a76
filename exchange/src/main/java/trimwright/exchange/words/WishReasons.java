package trimwright.exchange.words;

import trimwright.exchange.unit.Measures;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;

/**
 * Why a wish is wished, from where on it counts as poor, and how much it weighs, in words. What is
 * good and poor was chosen by judgement; no publication sets it.
 */
public final class WishReasons {
  private static final String[] WEIGHTS = {"not at all", "a little", "somewhat", "much", "most"};

  private WishReasons() {}

  /** Why it is wished, and for whom more or less. */
  public static String why(Wish wish) {
    return switch (wish) {
      case LEVEL ->
          "A level deck is what feet and eyes expect: nose-up tires the front leg's shin, nose-down"
              + " feels like falling.";
      case FEET ->
          "A load shared as the rider likes it lets them stand for an hour. A few hundredths nobody"
              + " feels; a tenth tires one leg.";
      case GROWTH ->
          "When the load wanders from foot to foot with speed, each change of throttle asks for a"
              + " step or a lean. Beginners cannot give it; carvers do it without a thought.";
      case TAKE_OFF ->
          "A slow take-off needs less run, less power and less balance. It weighs most for first"
              + " flights, and again in waves that have to be caught.";
      case STALL ->
          "Room to the stall is what a clumsy pull, a gust or a wake may use up. Beginners use more"
              + " of it.";
      case MANNERS ->
          "How quickly the deck answers the feet: calm forgives, lively turns. Beginners want less,"
              + " carvers and wave riders more, nobody wants either without end.";
      case TURN ->
          "Before the upper tip comes near the surface a turn is over. Carvers lean most; in first"
              + " flights nobody leans.";
      case RANGE -> "How far out anyone may ride and still come back on their own.";
      case GEAR_MASS ->
          "Light gear is carried to the water and turns at once. Beginners have it carried for them.";
      case FEET_MOVED -> "The usual stance is a habit; each centimetre beside it has to be learnt.";
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
