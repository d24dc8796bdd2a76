package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;

/** Round numbers along an axis. */
final class Ticks {
  private Ticks() {}

  /**
   * The largest of 1, 2 and 5 times a power of ten that is not above a value.
   *
   * @param value above 0
   */
  static double roundBelow(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    double lead = value / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  /** The smallest of 1, 2 and 5 times a power of ten that is not below a value. */
  static double roundAbove(double value) {
    double below = roundBelow(value);
    // A hair's breadth of tolerance, so that 2 stays 2 whatever the logarithm's last digit says.
    if (below >= value * (1 - 1e-9)) {
      return below;
    }
    double power = Math.pow(10, Math.floor(Math.log10(below * (1 + 1e-9))));
    double lead = Math.round(below / power);
    return power * (lead < 2 ? 2 : lead < 5 ? 5 : 10);
  }

  /**
   * Ticks inside a range.
   *
   * @param from lower end
   * @param to upper end, above the lower
   * @param atMost how many steps may be taken
   */
  static List<Double> between(double from, double to, int atMost) {
    double step = step(from, to, atMost);
    List<Double> ticks = new ArrayList<>();
    long first = (long) Math.ceil(from / step - 1e-9);
    long last = (long) Math.floor(to / step + 1e-9);
    for (long i = first; i <= last; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  static double step(double from, double to, int atMost) {
    return roundAbove((to - from) / Math.max(1, atMost));
  }

  /** Decimals that a step needs. */
  static int decimals(double step) {
    return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
  }
}
