package trimwright.exchange.picture;

import java.util.List;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.trim.Curve;

/**
 * The speed axis that all panels of a sheet share, in the unit shown.
 *
 * @param from lowest speed [km/h or mph]
 * @param to highest speed [km/h or mph]
 * @param left where the lowest stands [px]
 * @param right where the highest stands [px]
 */
record SpeedAxis(double from, double to, double left, double right) {
  /** Room that a tick's number needs [letters]. */
  private static final double TICK_ROOM = 4;

  static SpeedAxis of(Curve curve, Unit unit, double left, double right) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (var outcome : curve.outcomes()) {
      from = Math.min(from, unit.fromSi(outcome.speed()));
      to = Math.max(to, unit.fromSi(outcome.speed()));
    }
    if (!(to > from)) {
      // One speed or none: a stretch around it, so that there is an axis at all.
      double middle = Double.isFinite(from) ? from : 20;
      from = middle - 1;
      to = middle + 1;
    }
    return new SpeedAxis(from, to, left, right);
  }

  double x(double speed) {
    return left + (speed - from) / (to - from) * (right - left);
  }

  boolean holds(double speed) {
    return speed >= from - 1e-9 && speed <= to + 1e-9;
  }

  double clamped(double speed) {
    return Math.max(from, Math.min(to, speed));
  }

  List<Double> ticks(double fontSize) {
    int atMost = Math.max(2, (int) ((right - left) / (TICK_ROOM * fontSize)));
    return Ticks.between(from, to, atMost);
  }
}
