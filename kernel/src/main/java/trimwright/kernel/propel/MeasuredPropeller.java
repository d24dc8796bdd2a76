package trimwright.kernel.propel;

import java.util.List;
import trimwright.kernel.numeric.LimitedCubic;

/**
 * A propeller by its own measured open-water table. Between rows a cubic that does not overshoot;
 * beyond the table the end's slope carried on, which {@link #covers} tells. No Reynolds number is
 * corrected for: the table is taken to be of this propeller at its own size.
 */
public final class MeasuredPropeller implements OpenWater {
  /** Fewest rows of a table. */
  public static final int FEWEST_ROWS = 3;

  /** A torque coefficient carried on beyond the table never falls below this share of the last. */
  private static final double LEAST_TORQUE = 0.2;

  private final double from;
  private final double to;
  private final LimitedCubic thrust;
  private final LimitedCubic torque;
  private final double leastTorque;
  private final double noThrust;

  /**
   * A propeller by its table.
   *
   * @param rows by rising advance ratio: thrust falling and above 0 but in the last row, torque
   *     above 0
   * @throws IllegalArgumentException if there are fewer than 3 rows or they are not so
   */
  public MeasuredPropeller(List<OpenWaterRow> rows) {
    int n = rows.size();
    if (n < FEWEST_ROWS) {
      throw new IllegalArgumentException(
          "an open-water table needs at least " + FEWEST_ROWS + " rows, had " + n);
    }
    double[] at = new double[n];
    double[] kt = new double[n];
    double[] kq = new double[n];
    for (int i = 0; i < n; i++) {
      OpenWaterRow row = rows.get(i);
      at[i] = row.advance();
      kt[i] = row.thrust();
      kq[i] = row.torque();
      boolean falls = i == 0 || kt[i] < kt[i - 1];
      boolean rises = i == 0 ? at[i] >= 0 : at[i] > at[i - 1];
      boolean pushes = i == n - 1 || kt[i] > 0;
      if (!(falls && rises && pushes && kq[i] > 0)) {
        throw new IllegalArgumentException(
            "rows must rise in advance ratio from 0 or more, fall in thrust coefficient, push in all"
                + " but the last and have a torque coefficient above 0; row "
                + (i + 1)
                + " is "
                + row);
      }
    }
    from = at[0];
    to = at[n - 1];
    thrust = new LimitedCubic(at, kt);
    torque = new LimitedCubic(at, kq);
    leastTorque = LEAST_TORQUE * kq[n - 1];
    double slope = thrust.slope(to);
    noThrust = kt[n - 1] > 0 ? to - kt[n - 1] / slope : to;
  }

  @Override
  public double thrustCoefficient(double advance, double reynolds) {
    return thrust.value(advance);
  }

  @Override
  public double torqueCoefficient(double advance, double reynolds) {
    return Math.max(leastTorque, torque.value(advance));
  }

  @Override
  public double noThrustAdvance() {
    return noThrust;
  }

  @Override
  public boolean covers(double advance) {
    return advance >= from && advance <= to;
  }
}
