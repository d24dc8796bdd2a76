package trimwright.kernel.section;

import trimwright.kernel.numeric.CubicSpline;

/**
 * Where the chord line of an outline begins that is drawn at an angle: the place of the nose about
 * which it bends alike on both sides, so that the mean line ends there. For NACA sections turned by
 * any angle that is the drawn leading edge to within 0.04 degrees of the chord line (0.002 for
 * 2412, 0.02 for 23012, 0.04 for 23015), where the place furthest from the trailing edge lies 0.08
 * to 0.4 degrees below it.
 */
final class OutlineNose {
  /** How far along the outline to either side the two bends are compared [chords]. */
  private static final double REACH = 0.02;

  private static final int COMPARED = 8;

  /** How far from the furthest place the middle of the bend is looked for [chords]. */
  private static final double SEARCH = 0.03;

  private static final int SEARCH_STEPS = 60;
  private static final int HALVINGS = 40;

  private final CubicSpline x;
  private final CubicSpline y;
  private final double[] arc;

  /**
   * An outline over the distance along it.
   *
   * @param x distances, any unit
   * @param y heights, same unit
   * @param arc distance along the outline at each given point
   */
  OutlineNose(CubicSpline x, CubicSpline y, double[] arc) {
    this.x = x;
    this.y = y;
    this.arc = arc;
  }

  /**
   * The nose.
   *
   * @param edgeX distance of the trailing edge
   * @param edgeY its height
   * @return distance along the outline; the place furthest from the trailing edge where no other
   *     bends alike on both sides
   */
  double place(double edgeX, double edgeY) {
    double furthest = furthest(edgeX, edgeY);
    double chord = Math.hypot(x.value(furthest) - edgeX, y.value(furthest) - edgeY);
    double step = SEARCH * chord / SEARCH_STEPS;
    // Outwards from the furthest place, so that the nearest one is found first.
    for (int k = 0; k < SEARCH_STEPS; k++) {
      for (int side = -1; side <= 1; side += 2) {
        double near = furthest + side * k * step;
        double far = near + side * step;
        if (uneven(near, chord) * uneven(far, chord) <= 0) {
          return halved(near, far, chord);
        }
      }
    }
    return furthest;
  }

  private double halved(double from, double to, double chord) {
    double a = from;
    double b = to;
    double atA = uneven(a, chord);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (a + b);
      double there = uneven(middle, chord);
      if (atA * there <= 0) {
        b = middle;
      } else {
        a = middle;
        atA = there;
      }
    }
    return 0.5 * (a + b);
  }

  /** How much further a walk one way gets one than the same walk the other way. */
  private double uneven(double place, double chord) {
    double sum = 0;
    for (int k = 1; k <= COMPARED; k++) {
      double walk = REACH * chord * k / COMPARED;
      double one =
          Math.hypot(
              x.value(place + walk) - x.value(place), y.value(place + walk) - y.value(place));
      double other =
          Math.hypot(
              x.value(place - walk) - x.value(place), y.value(place - walk) - y.value(place));
      sum += (one * one - other * other) / (walk * walk);
    }
    return sum;
  }

  /**
   * Distance along the outline of the place furthest from a point: a coarse walk, then golden
   * sections.
   */
  private double furthest(double fromX, double fromY) {
    int best = 1;
    double largest = 0;
    for (int i = 1; i < arc.length - 1; i++) {
      double distance = Math.hypot(x.value(arc[i]) - fromX, y.value(arc[i]) - fromY);
      if (distance > largest) {
        largest = distance;
        best = i;
      }
    }
    double a = arc[best - 1];
    double b = arc[best + 1];
    double golden = 0.5 * (Math.sqrt(5) - 1);
    for (int i = 0; i < 60; i++) {
      double c = b - golden * (b - a);
      double d = a + golden * (b - a);
      double atC = Math.hypot(x.value(c) - fromX, y.value(c) - fromY);
      double atD = Math.hypot(x.value(d) - fromX, y.value(d) - fromY);
      if (atC > atD) {
        b = d;
      } else {
        a = c;
      }
    }
    return 0.5 * (a + b);
  }
}
