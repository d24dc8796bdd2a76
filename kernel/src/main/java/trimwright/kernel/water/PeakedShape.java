package trimwright.kernel.water;

import trimwright.kernel.numeric.GaussLegendre;
import trimwright.kernel.numeric.Roots;

/**
 * The shape of a wind sea's spectrum over x, frequency over that of the peak:
 *
 * <pre>  x^-5 exp(-5/4 x^-4) enhancement^exp(-(x - 1)² / (2 width²))</pre>
 *
 * with a width of 0.07 below the peak and 0.09 above it (K. Hasselmann and 15 others, Deutsche
 * Hydrographische Zeitschrift, Reihe A 8, no. 12, 1973, as quoted by many; an enhancement of 1 is
 * the shape of W. J. Pierson and L. Moskowitz, Journal of Geophysical Research 69, 1964).
 *
 * <p>Its integrals are taken over y = x^-2, the length of a wave over that of the peak's: there the
 * even ones up to the second are smooth and fall like exp(-5/4 y²). What the enhancement adds is
 * all between {@value #LEAST} and {@value #MOST}; the rest has closed integrals. Immutable.
 */
final class PeakedShape {
  private static final double WIDTH_BELOW = 0.07;
  private static final double WIDTH_ABOVE = 0.09;

  /** Beyond this y nothing is left: exp(-45). */
  private static final double MOST = 6;

  /** Below this y the enhancement has no part: exp(-42). */
  private static final double LEAST = 0.3;

  /** Panels per unit of y, so that the peak, where the width leaps, lies on an edge. */
  private static final int PER_UNIT = 100;

  private static final GaussLegendre RULE = GaussLegendre.of(4);

  /** Gamma function of 3/4 and of 1/4 (Abramowitz and Stegun 1964, 6.1, from memory). */
  private static final double GAMMA_THREE_QUARTERS = 1.2254167024651776;

  private static final double GAMMA_ONE_QUARTER = 3.625609908221908;

  private final double logEnhancement;

  /** Energy in the waves shorter than a panel's end. */
  private final double[] energy;

  /** Second moment of the same waves. */
  private final double[] second;

  /**
   * A shape.
   *
   * @param enhancement of the peak [1]
   */
  PeakedShape(double enhancement) {
    logEnhancement = Math.log(enhancement);
    int panels = (int) (MOST * PER_UNIT);
    energy = new double[panels + 1];
    second = new double[panels + 1];
    for (int i = 0; i < panels; i++) {
      energy[i + 1] = energy[i] + part(edge(i), edge(i + 1), 0, 0);
      second[i + 1] = second[i] + part(edge(i), edge(i + 1), 2, 0);
    }
  }

  /** The shape at a frequency over that of the peak. */
  double density(double x) {
    double y = 1 / (x * x);
    return y * y / x * Math.exp(-1.25 * y * y + logEnhancement * nearness(x));
  }

  /** The integral of the shape. */
  double total() {
    return energy[energy.length - 1];
  }

  /**
   * The integral of the shape times x to a power.
   *
   * @param order the power, 0 to 3: the fourth has no limit
   */
  double moment(int order) {
    double sum = 0.25 * Math.pow(1.25, 0.25 * order - 1) * gamma(order);
    for (int i = (int) (LEAST * PER_UNIT); i < MOST * PER_UNIT; i++) {
      sum += part(edge(i), edge(i + 1), order, 1);
    }
    return sum;
  }

  /**
   * Bands of equal energy, longest waves first.
   *
   * @param count how many
   * @return of each the frequency over that of the peak whose square is the mean over the band's
   *     energy
   */
  double[] evenBands(int count) {
    double[] x = new double[count];
    double each = total() / count;
    double before = 0;
    for (int i = 1; i <= count; i++) {
      double here = i == count ? second[second.length - 1] : secondWithin(i * each);
      x[count - i] = Math.sqrt((here - before) / each);
      before = here;
    }
    return x;
  }

  /** Second moment of the shortest waves that hold an energy. */
  private double secondWithin(double held) {
    int found = java.util.Arrays.binarySearch(energy, held);
    int i = found >= 0 ? found : -found - 2;
    double from = edge(i);
    double y =
        Roots.between(
            t -> energy[i] + part(from, t, 0, 0) - held,
            from,
            energy[i] - held,
            edge(i + 1),
            energy[i + 1] - held,
            1e-15);
    return second[i] + part(from, y, 2, 0);
  }

  /** An integral over a part of y, less that without enhancement where asked. */
  private double part(double from, double to, int order, int without) {
    double sum = 0;
    for (int i = 0; i < RULE.size(); i++) {
      double y = RULE.node(i, from, to);
      double raised = Math.exp(logEnhancement * nearness(1 / Math.sqrt(y))) - without;
      double power = order == 0 ? y : Math.pow(y, 1 - 0.5 * order);
      sum += RULE.weight(i, from, to) * 0.5 * power * Math.exp(-1.25 * y * y) * raised;
    }
    return sum;
  }

  private static double nearness(double x) {
    double away = (x - 1) / (x <= 1 ? WIDTH_BELOW : WIDTH_ABOVE);
    return Math.exp(-0.5 * away * away);
  }

  /** Gamma function of 1 - order/4. */
  private static double gamma(int order) {
    return switch (order) {
      case 0 -> 1;
      case 1 -> GAMMA_THREE_QUARTERS;
      case 2 -> Math.sqrt(Math.PI);
      case 3 -> GAMMA_ONE_QUARTER;
      default ->
          throw new IllegalArgumentException("order of a moment must be 0 to 3, was " + order);
    };
  }

  private static double edge(int i) {
    return (double) i / PER_UNIT;
  }
}
