package trimwright.exchange.picture;

/**
 * A straight line that a label had better not cover.
 *
 * @param from one end
 * @param to the other
 */
record Stroke(Dot from, Dot to) {

  /** How much of the line lies inside a box [px] (clipping by Liang and Barsky, 1984). */
  double lengthInside(Box box) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double[] steps = {-dx, dx, -dy, dy};
    double[] gaps = {
      from.x() - box.x(), box.right() - from.x(), from.y() - box.y(), box.bottom() - from.y()
    };
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < steps.length; i++) {
      if (steps[i] == 0) {
        if (gaps[i] < 0) {
          return 0;
        }
      } else if (steps[i] < 0) {
        enter = Math.max(enter, gaps[i] / steps[i]);
      } else {
        leave = Math.min(leave, gaps[i] / steps[i]);
      }
    }
    return leave > enter ? (leave - enter) * Math.hypot(dx, dy) : 0;
  }

  /** Whether two lines cross. */
  boolean crosses(Stroke other) {
    return side(from, to, other.from) * side(from, to, other.to) < 0
        && side(other.from, other.to, from) * side(other.from, other.to, to) < 0;
  }

  private static double side(Dot a, Dot b, Dot p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }
}
