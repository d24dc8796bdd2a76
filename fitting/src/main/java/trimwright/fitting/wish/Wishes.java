package trimwright.fitting.wish;

import java.util.EnumMap;
import java.util.Map;

/**
 * A grade and a weight for every wish. Immutable.
 *
 * <p>The shortfall of a ride is the mean over its wishes, each by its weight: 0 where all are met,
 * 1 where each is poor. It ranks and nothing more; whoever shows it shows its terms.
 */
public final class Wishes {
  /** Largest weight; 0 leaves a wish out. */
  public static final int MOST_WEIGHT = 4;

  private final Map<Wish, Grade> grades;
  private final Map<Wish, Integer> weights;

  private Wishes(Map<Wish, Grade> grades, Map<Wish, Integer> weights) {
    this.grades = grades;
    this.weights = weights;
  }

  /** The chosen wishes of a kind of riding. */
  public static Wishes of(RidingKind kind) {
    Map<Wish, Grade> grades = new EnumMap<>(Wish.class);
    Map<Wish, Integer> weights = new EnumMap<>(Wish.class);
    for (Wish wish : Wish.values()) {
      grades.put(wish, ChosenWishes.grade(kind, wish));
      weights.put(wish, ChosenWishes.weight(kind, wish));
    }
    return new Wishes(grades, weights);
  }

  /**
   * The same with another weight.
   *
   * @param wish which
   * @param weight 0 for not at all, up to {@link #MOST_WEIGHT}
   * @throws IllegalArgumentException if the weight lies outside
   */
  public Wishes weighing(Wish wish, int weight) {
    if (weight < 0 || weight > MOST_WEIGHT) {
      throw new IllegalArgumentException(
          "a weight must be from 0 to " + MOST_WEIGHT + ", was " + weight);
    }
    Map<Wish, Integer> others = new EnumMap<>(weights);
    others.put(wish, weight);
    return new Wishes(grades, others);
  }

  /** What of a wish is good and poor. */
  public Grade grade(Wish wish) {
    return grades.get(wish);
  }

  /** How much a wish weighs, from 0. */
  public int weight(Wish wish) {
    return weights.get(wish);
  }

  /**
   * How far a ride falls short of one wish.
   *
   * @param wish which
   * @param value in its unit; NaN where the ride has none
   * @return 0 where it is good or there is none, 1 where it is poor [1]
   */
  public double shortfall(Wish wish, double value) {
    return Double.isNaN(value) ? 0 : grades.get(wish).shortfall(value);
  }

  /**
   * How far a ride falls short of all wishes: the mean by weights. A wish without a value counts as
   * met, so that a further value never lowers the sum.
   *
   * @param values of the ride
   * @return 0 where all are met; 0 too where nothing weighs [1]
   */
  public double shortfall(WishValues values) {
    double sum = 0;
    for (Wish wish : Wish.values()) {
      sum += weights.get(wish) * shortfall(wish, values.of(wish));
    }
    return sum == 0 ? 0 : sum / weight();
  }

  /** All weights together. */
  public int weight() {
    int all = 0;
    for (int weight : weights.values()) {
      all += weight;
    }
    return all;
  }
}
