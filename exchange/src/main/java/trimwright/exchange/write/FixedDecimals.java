package trimwright.exchange.write;

/** Numbers as JSON text with a bounded number of decimals, quickly and without trailing zeros. */
final class FixedDecimals {
  private static final double[] SCALE = {1, 10, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

  /** Above this a double has no decimals left to round, or a long no room. */
  private static final double LARGEST = 1e15;

  private FixedDecimals() {}

  /**
   * A number rounded half away from zero.
   *
   * @param value finite
   * @param decimals 0 to 9
   * @return such as {@code -0.25}; never a negative zero
   * @throws IllegalArgumentException if the value is not finite
   */
  static String text(double value, int decimals) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a number in a document must be finite, was " + value);
    }
    double scaled = Math.abs(value) * SCALE[decimals];
    if (scaled >= LARGEST) {
      return Double.toString(value);
    }
    long digits = Math.round(scaled);
    if (digits == 0) {
      return "0";
    }
    int left = decimals;
    while (left > 0 && digits % 10 == 0) {
      digits /= 10;
      left--;
    }
    String all = Long.toString(digits);
    String sign = value < 0 ? "-" : "";
    if (left == 0) {
      return sign + all;
    }
    int whole = all.length() - left;
    return whole > 0
        ? sign + all.substring(0, whole) + '.' + all.substring(whole)
        : sign + "0." + "0".repeat(-whole) + all;
  }
}
