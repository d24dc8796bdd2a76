package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.desk.RangeProblem.Bound;

/** Values at even distances between two ends, with limits on the ends and on their number. */
final class EvenSteps {
  /** More values than any picture shows; a slip of the finger should not compute for minutes. */
  static final int MOST = 2000;

  /** Part of a step by which the last value may lie beyond the end: rounding of decimal steps. */
  private static final double SLACK = 1e-6;

  private EvenSteps() {}

  /**
   * Permitted ends.
   *
   * @param lowest smallest value
   * @param highest largest value
   * @param unit of both, for messages
   */
  record Limits(double lowest, double highest, String unit) {}

  /**
   * The values.
   *
   * @throws RangeProblem if an end is outside the limits, the ends are the wrong way round, the
   *     step is not above 0 or there would be too many values
   */
  static List<Double> list(double from, double to, double step, Limits limits) {
    requireInside(Bound.FROM, from, limits);
    requireInside(Bound.TO, to, limits);
    if (from > to) {
      throw new RangeProblem(
          Bound.TO,
          "must not be below the lower end " + text(from, limits) + ", was " + text(to, limits));
    }
    if (!(step > 0) || !Double.isFinite(step)) {
      throw new RangeProblem(
          Bound.STEP, "must be above 0 " + limits.unit() + ", was " + text(step, limits));
    }
    double intervals = Math.floor((to - from) / step + SLACK);
    if (intervals + 1 > MOST) {
      throw new RangeProblem(
          Bound.STEP,
          String.format(
              Locale.ROOT,
              "gives more than %d values between %s and %s; take a larger step, was %s",
              MOST,
              text(from, limits),
              text(to, limits),
              text(step, limits)));
    }
    List<Double> values = new ArrayList<>();
    for (int i = 0; i <= intervals; i++) {
      values.add(from + i * step);
    }
    return List.copyOf(values);
  }

  private static void requireInside(Bound bound, double value, Limits limits) {
    if (!(value >= limits.lowest() && value <= limits.highest())) {
      throw new RangeProblem(
          bound,
          "must be from "
              + bare(limits.lowest())
              + " to "
              + text(limits.highest(), limits)
              + ", was "
              + text(value, limits));
    }
  }

  private static String text(double value, Limits limits) {
    return bare(value) + " " + limits.unit();
  }

  private static String bare(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
