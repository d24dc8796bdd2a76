package trimwright.fitting.wish;

import java.util.Arrays;

/** A ride's value of every wish, in SI; NaN where it has none. Immutable. */
public final class WishValues {
  private final double[] values;

  private WishValues(double[] values) {
    this.values = values;
  }

  /** No value of any wish. */
  public static WishValues none() {
    double[] values = new double[Wish.values().length];
    Arrays.fill(values, Double.NaN);
    return new WishValues(values);
  }

  /**
   * Values in the order of the wishes.
   *
   * @param values one per wish in its unit; NaN for none
   * @throws IllegalArgumentException if they are not as many as wishes
   */
  public static WishValues of(double[] values) {
    if (values.length != Wish.values().length) {
      throw new IllegalArgumentException(
          "there must be a value for each of "
              + Wish.values().length
              + " wishes, were "
              + values.length);
    }
    return new WishValues(values.clone());
  }

  /**
   * The same with another value.
   *
   * @param wish of which
   * @param value in its unit; NaN for none
   */
  public WishValues with(Wish wish, double value) {
    double[] copy = values.clone();
    copy[wish.ordinal()] = value;
    return new WishValues(copy);
  }

  /** The value of a wish in its unit; NaN where there is none. */
  public double of(Wish wish) {
    return values[wish.ordinal()];
  }

  /** Whether there is a value. */
  public boolean has(Wish wish) {
    return !Double.isNaN(of(wish));
  }
}
