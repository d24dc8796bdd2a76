package trimwright.kernel.band;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A computed number and what each input's tolerance does to it.
 *
 * <p>Immutable.
 */
public final class Spread {
  /** Standard deviations on either side: 95 % of a normal spread. */
  private static final double REACH = 2;

  private final double value;
  private final double[] effects;

  /**
   * A number with its effects.
   *
   * @param value the number as computed
   * @param effects change by one standard deviation of each input, in the order of {@link Input}
   */
  Spread(double value, double[] effects) {
    this.value = value;
    this.effects = effects.clone();
  }

  /**
   * A number with its effects.
   *
   * @param value the number as computed
   * @param effects change by one standard deviation of each input that has an effect
   * @return the number and its spread
   */
  public static Spread of(double value, Map<Input, Double> effects) {
    double[] all = new double[Input.values().length];
    effects.forEach((input, effect) -> all[input.ordinal()] = effect);
    return new Spread(value, all);
  }

  /**
   * One input's part in the variance.
   *
   * @param input the input
   * @param share of the whole variance [1]
   */
  public record Part(Input input, double share) {}

  /** The number as computed. */
  public double value() {
    return value;
  }

  /** Change by one standard deviation of an input, with its sign. */
  public double effect(Input input) {
    return effects[input.ordinal()];
  }

  /** One standard deviation. */
  public double deviation() {
    double sum = 0;
    for (double effect : effects) {
      sum += effect * effect;
    }
    return Math.sqrt(sum);
  }

  /** Half the width of the band: two standard deviations. */
  public double reach() {
    return REACH * deviation();
  }

  /** Lower end of the band. */
  public double low() {
    return value - reach();
  }

  /** Upper end of the band. */
  public double high() {
    return value + reach();
  }

  /**
   * Whether a value lies inside the band: then the number cannot be told from it.
   *
   * @param other the value, in the same unit
   */
  public boolean holds(double other) {
    return Math.abs(other - value) <= reach();
  }

  /** What makes the band, the largest part first; inputs without any effect are left out. */
  public List<Part> parts() {
    double variance = deviation() * deviation();
    List<Part> parts = new ArrayList<>();
    for (Input input : Input.values()) {
      double effect = effects[input.ordinal()];
      if (effect != 0) {
        parts.add(new Part(input, effect * effect / variance));
      }
    }
    parts.sort(Comparator.comparingDouble(Part::share).reversed());
    return parts;
  }

  /**
   * This number less another, with the band of the difference: what both have from the same source
   * cancels as far as it acts alike on both.
   *
   * @param other the other number, of the same unit
   * @param shared inputs that are one and the same in both, see {@link SharedInputs}; all others
   *     count twice
   * @return the difference
   */
  public Difference minus(Spread other, Set<Input> shared) {
    double variance = 0;
    for (Input input : Input.values()) {
      double a = effect(input);
      double b = other.effect(input);
      variance += shared.contains(input) ? (a - b) * (a - b) : a * a + b * b;
    }
    return new Difference(value - other.value, REACH * Math.sqrt(variance));
  }

  /**
   * Two numbers' difference.
   *
   * @param value the difference
   * @param reach half the width of its band
   */
  public record Difference(double value, double reach) {
    /** Whether the two can be told apart. */
    public boolean distinct() {
      return Math.abs(value) > reach;
    }
  }
}
