package trimwright.kernel.section;

import trimwright.kernel.layer.Disturbance;
import trimwright.kernel.numeric.LimitedCubic;

/**
 * Computes a polar: from no angle upwards and then downwards, each point from the ones before.
 * Points without agreement are tried again by a smaller step, then bridged by the curve through
 * their neighbours; beyond the last agreement on either side stands a rule for deep stall. A
 * workspace for one thread.
 */
public final class PolarSweep {
  /** Failures in a row after which a side is given up. */
  private static final int GIVEN_UP = 6;

  /**
   * Normal force of a plate across the stream [1], 1.11 + 0.018 times the aspect ratio (Viterna and
   * Corrigan), at 10.
   */
  private static final double ACROSS = 1.29;

  private final double[] angles;
  private final double[][] values;
  private final boolean[] computed;

  private PolarSweep(double[] angles) {
    this.angles = angles;
    values = new double[PolarRow.QUANTITIES][angles.length];
    computed = new boolean[angles.length];
  }

  /**
   * Computes a polar.
   *
   * @param surface the section
   * @param angles of attack, rising, some on each side of 0 [rad]
   * @param reynolds Reynolds number on the chord [1]
   * @param disturbance disturbances of the stream
   * @param forced where both surfaces force transition [chords]; 1 for a clean section
   * @return the polar
   */
  public static PolarRow run(
      ViscousSurface surface,
      double[] angles,
      double reynolds,
      Disturbance disturbance,
      double forced) {
    PolarSweep sweep = new PolarSweep(angles.clone());
    ViscousFlow flow = new ViscousFlow(surface, reynolds, disturbance, forced, forced);
    int start = 0;
    while (start < angles.length - 1 && angles[start] < -1e-9) {
      start++;
    }
    sweep.march(flow, start, 1, angles.length);
    flow.restart();
    if (sweep.computed[start]) {
      flow.solve(angles[start]);
    }
    sweep.march(flow, start - 1, -1, -1);
    return sweep.finish();
  }

  private void march(ViscousFlow flow, int from, int step, int end) {
    int failed = 0;
    for (int i = from; i != end && failed < GIVEN_UP; i += step) {
      ViscousPoint point = flow.solve(angles[i]);
      if (!point.converged() && i != from) {
        flow.solve(0.5 * (angles[i] + angles[i - step]));
        point = flow.solve(angles[i]);
      }
      if (!point.converged()) {
        flow.restart();
        point = flow.solve(angles[i]);
      }
      if (!point.converged() || !(point.drag() > 0)) {
        failed++;
        continue;
      }
      failed = 0;
      computed[i] = true;
      values[PolarRow.LIFT][i] = point.lift();
      values[PolarRow.DRAG][i] = point.drag();
      values[PolarRow.MOMENT][i] = point.moment();
      values[PolarRow.PRESSURE][i] = point.minimumPressure();
    }
  }

  private PolarRow finish() {
    int count = 0;
    int first = -1;
    int last = -1;
    for (int i = 0; i < angles.length; i++) {
      if (computed[i]) {
        count++;
        first = first < 0 ? i : first;
        last = i;
      }
    }
    if (count < 2) {
      throw new ArithmeticException(
          "no flow about the section was found at " + angles.length + " angles but " + count);
    }
    bridge(first, last, count);
    for (int i = last + 1; i < angles.length; i++) {
      extend(last, i, 1);
    }
    for (int i = first - 1; i >= 0; i--) {
      extend(first, i, -1);
    }
    PointKind[] kinds = new PointKind[angles.length];
    for (int i = 0; i < kinds.length; i++) {
      boolean inside = i >= first && i <= last;
      kinds[i] = computed[i] ? PointKind.COMPUTED : inside ? PointKind.BRIDGED : PointKind.EXTENDED;
    }
    return new PolarRow(angles, values, kinds);
  }

  private void bridge(int first, int last, int count) {
    double[] at = new double[count];
    double[] value = new double[count];
    for (double[] quantity : values) {
      int k = 0;
      for (int i = first; i <= last; i++) {
        if (computed[i]) {
          at[k] = angles[i];
          value[k++] = quantity[i];
        }
      }
      LimitedCubic curve = new LimitedCubic(at, value);
      for (int i = first; i <= last; i++) {
        if (!computed[i]) {
          quantity[i] = curve.value(angles[i]);
        }
      }
    }
  }

  /**
   * Deep stall after L. A. Viterna and R. D. Corrigan (NASA TM-82944, 1982), from memory, begun at
   * the last computed point; the moment turns into that of a plate's normal force at 0.5 - 0.175 (1
   * - 2 a / pi) of the chord (C. Lindenburg, ECN-RX-01-004, 2001), from memory. An order of size.
   */
  private void extend(int known, int i, int side) {
    double a0 = Math.max(0.05, side * angles[known]);
    double a = Math.max(a0, side * angles[i]);
    double lift0 = side * values[PolarRow.LIFT][known];
    double drag0 = values[PolarRow.DRAG][known];
    double sin0 = Math.sin(a0);
    double cos0 = Math.cos(a0);
    double sin = Math.sin(a);
    double cos = Math.cos(a);
    double b2 = (drag0 - ACROSS * sin0 * sin0) / cos0;
    double a2 = (lift0 - ACROSS * sin0 * cos0) * sin0 / (cos0 * cos0);
    double lift = ACROSS * sin * cos + a2 * cos * cos / sin;
    double drag = ACROSS * sin * sin + b2 * cos;
    double left = Math.exp(-(a - a0) / Math.toRadians(8));
    double away = side * values[PolarRow.MOMENT][known] - plate(a0, lift0, drag0);
    values[PolarRow.LIFT][i] = side * lift;
    values[PolarRow.DRAG][i] = Math.max(drag, drag0);
    values[PolarRow.MOMENT][i] = side * (plate(a, lift, drag) + left * away);
    values[PolarRow.PRESSURE][i] = values[PolarRow.PRESSURE][known];
  }

  private static double plate(double a, double lift, double drag) {
    double normal = lift * Math.cos(a) + drag * Math.sin(a);
    return -normal * (0.25 - 0.175 * (1 - 2 * a / Math.PI));
  }
}
