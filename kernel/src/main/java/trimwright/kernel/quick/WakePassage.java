package trimwright.kernel.quick;

import java.util.List;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;

/**
 * The pitches at which the front wing's wake passes the stabilizer: the wake leaves the trailing
 * edge along the stream, and where one wing droops more than the other it does not pass all along
 * the stabilizer at once. There the wash has folds.
 *
 * @param from lowest such pitch [rad]
 * @param to highest [rad]
 */
record WakePassage(double from, double to) {
  /** Places along the stabilizer's half span that are looked at [1]. */
  private static final int PLACES = 5;

  private static final double QUARTER_TO_END = 0.75;

  /** From the quarter line to the last control points of the stabilizer. Chosen. */
  private static final double QUARTER_TO_CONTROL = 0.5;

  /** The passage of a craft's wake. */
  static WakePassage of(Craft craft) {
    PlacedWing front = craft.wings().get(0);
    PlacedWing tail = craft.wings().get(1);
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < PLACES; i++) {
      double y = 0.5 * tail.shape().span() * i / (PLACES - 1.0);
      for (double behind : new double[] {0, QUARTER_TO_CONTROL}) {
        double[] edge = point(front, y, QUARTER_TO_END);
        double[] there = point(tail, y, behind);
        double pitch = -Math.atan2(edge[1] - there[1], edge[0] - there[0]);
        from = Math.min(from, pitch);
        to = Math.max(to, pitch);
      }
    }
    return new WakePassage(from, to);
  }

  /** Both passages and what lies between them. */
  WakePassage with(WakePassage other) {
    return new WakePassage(Math.min(from, other.from), Math.max(to, other.to));
  }

  /** How far a pitch lies outside [rad]; 0 inside. */
  double distance(double pitch) {
    return Math.max(0, Math.max(from - pitch, pitch - to));
  }

  /** A point of a wing ahead and above the datum: some chords behind the quarter line. */
  private static double[] point(PlacedWing wing, double y, double behind) {
    List<Station> stations = wing.shape().stations();
    double fraction = Math.min(1, y / (0.5 * wing.shape().span()));
    int i = 1;
    while (i < stations.size() - 1 && stations.get(i).fraction() < fraction) {
      i++;
    }
    Station a = stations.get(i - 1);
    Station b = stations.get(i);
    double t = (fraction - a.fraction()) / (b.fraction() - a.fraction());
    double chord = behind * mix(t, a.chord(), b.chord());
    double angle = wing.incidence() + mix(t, a.twist(), b.twist());
    return new double[] {
      wing.ahead() + mix(t, a.ahead(), b.ahead()) - chord * Math.cos(angle),
      wing.above() + mix(t, a.above(), b.above()) - chord * Math.sin(angle)
    };
  }

  private static double mix(double share, double from, double to) {
    return from + share * (to - from);
  }
}
