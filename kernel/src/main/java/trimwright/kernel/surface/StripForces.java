package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;

/** Forces of the strips' sections at their effective angles. */
final class StripForces {
  private StripForces() {}

  /** Loads where every section follows its straight line: the lattice's, and the sections' own. */
  static List<WingLoad> straight(
      List<StripPolars> wings, List<SurfaceFlow> flows, double[] angle, double pitch) {
    Attitude at = Attitude.of(pitch);
    List<WingLoad> loads = new ArrayList<>(wings.size());
    int first = 0;
    for (int w = 0; w < flows.size(); w++) {
      StripPolars wing = wings.get(w);
      SurfaceFlow flow = flows.get(w);
      double[] own = new double[wing.count()];
      System.arraycopy(angle, first, own, 0, own.length);
      PlaneForce viscous = viscous(wing, own, null, at);
      loads.add(
          new WingLoad(
              flow.force().plus(viscous),
              flow.boundDrag(),
              flow.farFieldDrag(),
              -viscous.forward(),
              0,
              flow.stripLift(),
              own,
              wing.stall().stalled(own)));
      first += own.length;
    }
    return loads;
  }

  /**
   * Drag of the sections along the stream at their quarter chords, and what their moment there
   * differs by from that of no lift, which the lattice has already.
   *
   * @param angle effective angles of the wing's strips [rad]
   * @param stream speed of each strip's stream over the undisturbed one; null where all are 1
   */
  static PlaneForce viscous(StripPolars wing, double[] angle, double[] stream, Attitude at) {
    Strips s = wing.strips;
    double area = 0;
    double moment = 0;
    for (int k = 0; k < s.count; k++) {
      double pressure = stream == null ? 1 : stream[k] * stream[k];
      double strip = s.area(k);
      double drag = strip * pressure * wing.polar[k].dragAt(angle[k]);
      area += drag;
      moment += drag * s.above(k, at);
      double own = pressure * wing.polar[k].moment(angle[k]) - s.momentAtZeroLift(k);
      moment += strip * s.chord[k] * own;
    }
    return new PlaneForce(-area, 0, moment);
  }
}
