package trimwright.kernel.numeric;

import java.util.function.DoubleUnaryOperator;

/** Roots and extremes of functions of one variable. */
public final class Roots {
  /** Steps after which a bracket of any width has shrunk below rounding. */
  private static final int MOST_STEPS = 200;

  private static final double GOLDEN = 0.5 * (Math.sqrt(5) - 1);

  private Roots() {}

  /**
   * The root in a bracket, by false position with the Illinois rule (M. Dowell, P. Jarratt, BIT 11,
   * 1971, from memory), with bisection where that is slow.
   *
   * @param f continuous function
   * @param a one end
   * @param fa value there
   * @param b other end
   * @param fb value there, of the other sign than {@code fa} or 0
   * @param tolerance width of the last bracket, or distance to the root by the last slope
   * @return a root
   * @throws IllegalArgumentException if the values have the same sign
   */
  public static double between(
      DoubleUnaryOperator f, double a, double fa, double b, double fb, double tolerance) {
    if (fa == 0) {
      return a;
    }
    if (fb == 0) {
      return b;
    }
    if (fa > 0 == fb > 0) {
      throw new IllegalArgumentException("no change of sign between " + a + " and " + b);
    }
    double low = a;
    double high = b;
    double fLow = fa;
    double fHigh = fb;
    double last = Double.NaN;
    double fBefore = Double.NaN;
    int side = 0;
    for (int i = 0; i < MOST_STEPS && Math.abs(high - low) > tolerance; i++) {
      double x = (low * fHigh - high * fLow) / (fHigh - fLow);
      if (i % 8 == 7) {
        x = 0.5 * (low + high);
      }
      double fx = f.applyAsDouble(x);
      // Short steps alone may be a creeping false position: the slope between the last two points
      // must lead to a root as near.
      boolean settled =
          Math.abs(x - last) < 0.1 * tolerance
              && Math.abs(fx * (x - last)) < tolerance * Math.abs(fx - fBefore);
      if (fx == 0 || settled) {
        return x;
      }
      last = x;
      fBefore = fx;
      if (fx > 0 == fHigh > 0) {
        high = x;
        fHigh = fx;
        if (side == 1) {
          fLow *= 0.5;
        }
        side = 1;
      } else {
        low = x;
        fLow = fx;
        if (side == -1) {
          fHigh *= 0.5;
        }
        side = -1;
      }
    }
    return 0.5 * (low + high);
  }

  /**
   * Where a function that falls and then rises between two points is least, by golden section.
   *
   * @param f function
   * @param a one end
   * @param b other end, above {@code a}
   * @param tolerance width of the last bracket
   * @return place of the least value
   */
  public static double leastBetween(DoubleUnaryOperator f, double a, double b, double tolerance) {
    double low = a;
    double high = b;
    double x1 = high - GOLDEN * (high - low);
    double x2 = low + GOLDEN * (high - low);
    double f1 = f.applyAsDouble(x1);
    double f2 = f.applyAsDouble(x2);
    while (high - low > tolerance) {
      if (f1 < f2) {
        high = x2;
        x2 = x1;
        f2 = f1;
        x1 = high - GOLDEN * (high - low);
        f1 = f.applyAsDouble(x1);
      } else {
        low = x1;
        x1 = x2;
        f1 = f2;
        x2 = low + GOLDEN * (high - low);
        f2 = f.applyAsDouble(x2);
      }
    }
    return 0.5 * (low + high);
  }
}
