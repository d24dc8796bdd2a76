package trimwright.kernel.motion;

import java.util.List;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;

/**
 * Where the wings are, ahead of and above the datum in foil axes [m].
 *
 * @param frontAhead root quarter chord of the front wing
 * @param frontAbove the same
 * @param frontMeets mean three-quarter chord of the front wing ahead of the datum, by area
 * @param tailAhead root quarter chord of the stabilizer
 * @param tailAbove the same
 * @param tailMeets mean three-quarter chord of the stabilizer
 */
record WingPlaces(
    double frontAhead,
    double frontAbove,
    double frontMeets,
    double tailAhead,
    double tailAbove,
    double tailMeets) {

  static WingPlaces of(Craft craft) {
    PlacedWing front = craft.wings().get(0);
    PlacedWing tail = craft.wings().get(1);
    return new WingPlaces(
        front.ahead(), front.above(), meets(front), tail.ahead(), tail.above(), meets(tail));
  }

  /** How far the stabilizer is behind the front wing [m]. */
  double apart() {
    return frontAhead - tailAhead;
  }

  private static double meets(PlacedWing wing) {
    List<Station> stations = wing.shape().stations();
    double area = 0;
    double sum = 0;
    for (int i = 1; i < stations.size(); i++) {
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      double width = b.fraction() - a.fraction();
      // Simpson's rule: exact for a chord and a place that are linear.
      for (int part = 0; part <= 2; part++) {
        double t = 0.5 * part;
        double chord = a.chord() + t * (b.chord() - a.chord());
        double quarter = a.ahead() + t * (b.ahead() - a.ahead());
        double share = width * (part == 1 ? 4 : 1) / 6 * chord;
        area += share;
        sum += share * (quarter - 0.5 * chord);
      }
    }
    return wing.ahead() + sum / area;
  }
}
