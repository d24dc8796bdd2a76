package trimwright.fitting.wish;

/**
 * What of a wish is good and what is poor.
 *
 * @param from least good value, in the wish's unit; minus infinity where less is always better
 * @param to largest good value; infinity where more is always better
 * @param poor how far outside a value is that counts as poor, above 0
 */
public record Grade(double from, double to, double poor) {
  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if nothing is good, everything is, or poor is not above 0
   */
  public Grade {
    if (!(from <= to) || Double.isInfinite(from) && Double.isInfinite(to)) {
      throw new IllegalArgumentException("a grade must have an end, was " + from + " to " + to);
    }
    if (!(poor > 0) || Double.isInfinite(poor)) {
      throw new IllegalArgumentException("poor must lie above 0, was " + poor);
    }
  }

  /** Good up to a value. */
  public static Grade upTo(double to, double poor) {
    return new Grade(Double.NEGATIVE_INFINITY, to, poor);
  }

  /** Good from a value on. */
  public static Grade from(double from, double poor) {
    return new Grade(from, Double.POSITIVE_INFINITY, poor);
  }

  /**
   * How far a value falls short.
   *
   * @param value in the wish's unit
   * @return 0 where it is good, 1 where it is poor, more beyond [1]
   */
  public double shortfall(double value) {
    return Math.max(0, Math.max(from - value, value - to)) / poor;
  }
}
