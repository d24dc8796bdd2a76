package trimwright.kernel.section;

import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.numeric.CubicSpline;

/**
 * Several smooth functions of the Reynolds number, tabulated over its logarithm so that one
 * logarithm and one short polynomial each give them: natural cubic splines with 10 steps to the
 * decade from 1e3 to 1e8, constant beyond.
 */
final class ReynoldsTable {
  private static final double LOWEST = Math.log(1e3);
  private static final double HIGHEST = Math.log(1e8);
  private static final int STEPS = 50;
  private static final double STEPS_PER_LOG = STEPS / (HIGHEST - LOWEST);

  /** Four coefficients for each function in each step, functions of one step side by side. */
  private final double[] coefficient;

  private final int functions;

  ReynoldsTable(DoubleUnaryOperator... functions) {
    this.functions = functions.length;
    coefficient = new double[STEPS * functions.length * 4];
    double[] at = new double[STEPS + 1];
    double[] value = new double[STEPS + 1];
    for (int f = 0; f < functions.length; f++) {
      for (int i = 0; i <= STEPS; i++) {
        at[i] = i;
        value[i] = functions[f].applyAsDouble(Math.exp(LOWEST + i / STEPS_PER_LOG));
      }
      CubicSpline spline = CubicSpline.natural(at, value);
      for (int i = 0; i < STEPS; i++) {
        double rise = value[i + 1] - value[i];
        double first = spline.slope(i);
        double last = spline.slope(i + 1.0);
        int k = (i * functions.length + f) * 4;
        coefficient[k] = value[i];
        coefficient[k + 1] = first;
        coefficient[k + 2] = 3 * rise - 2 * first - last;
        coefficient[k + 3] = first + last - 2 * rise;
      }
    }
  }

  /** Place of a Reynolds number in the table, in steps. */
  static double place(double reynolds) {
    double steps = (Math.log(reynolds) - LOWEST) * STEPS_PER_LOG;
    return Math.max(0, Math.min(STEPS, steps));
  }

  /** Value of a function at a place. */
  double value(int function, double place) {
    int step = Math.min(STEPS - 1, (int) place);
    double f = place - step;
    int k = (step * functions + function) * 4;
    return coefficient[k]
        + f * (coefficient[k + 1] + f * (coefficient[k + 2] + f * coefficient[k + 3]));
  }
}
