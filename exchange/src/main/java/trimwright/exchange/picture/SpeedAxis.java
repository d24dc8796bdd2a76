package trimwright.exchange.picture;

import java.util.List;
import trimwright.exchange.words.Shown;
import trimwright.kernel.trim.Curve;

/**
 * The speed axis that all panels of a sheet share, in km/h.
 *
 * @param from lowest speed [km/h]
 * @param to highest speed [km/h]
 * @param left where the lowest stands [px]
 * @param right where the highest stands [px]
 */
record SpeedAxis(double from, double to, double left, double right) {
  /** Room that a tick's number needs [letters]. */
  private static final double TICK_ROOM = 4;

  static SpeedAxis of(Curve curve, double left, double right) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (var outcome : curve.outcomes()) {
      from = Math.min(from, Shown.kmh(outcome.speed()));
      to = Math.max(to, Shown.kmh(outcome.speed()));
    }
    if (!(to > from)) {
      // One speed or none: a stretch around it, so that there is an axis at all.
      double middle = Double.isFinite(from) ? from : 20;
      from = middle - 1;
      to = middle + 1;
    }
    return new SpeedAxis(from, to, left, right);
  }

  double x(double kmh) {
    return left + (kmh - from) / (to - from) * (right - left);
  }

  boolean holds(double kmh) {
    return kmh >= from - 1e-9 && kmh <= to + 1e-9;
  }

  double clamped(double kmh) {
    return Math.max(from, Math.min(to, kmh));
  }

  List<Double> ticks(double fontSize) {
    int atMost = Math.max(2, (int) ((right - left) / (TICK_ROOM * fontSize)));
    return Ticks.between(from, to, atMost);
  }
}
