package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;

/** Loads of wings whose strips are turned, from those of the straight lines. */
final class TurnedLoads {
  /** Drag coefficient that is too small to compare two ways to the induced drag by [1]. Chosen. */
  private static final double LITTLE_DRAG = 2e-3;

  /** Lift coefficient below which vortices hardly feel each other [1]. Chosen. */
  private static final double LITTLE_LIFT = 0.1;

  private final StripCoupling coupling;
  private final LoadShifts shifts;
  private final List<SurfaceFlow> straight;
  private final double[] straightLift;
  private final double[] crossing;
  private final Attitude at;
  private final int n;

  TurnedLoads(
      StripCoupling coupling,
      LoadShifts shifts,
      List<SurfaceFlow> straight,
      double[] straightLift,
      double[] crossing,
      Attitude at) {
    this.coupling = coupling;
    this.shifts = shifts;
    this.straight = straight;
    this.straightLift = straightLift;
    this.crossing = crossing;
    this.at = at;
    n = straightLift.length;
  }

  /**
   * The loads.
   *
   * @param turns of all strips, onset included [rad]
   * @param onsets of the wings [rad]
   * @param all lift coefficients of the strips on the undisturbed dynamic pressure [1]
   * @param angle effective angles [rad]
   */
  List<WingLoad> of(double[] turns, double[] onsets, double[] all, double[] angle) {
    double[] farBefore = Columns.times(shifts.farDrag(), straightLift);
    double[] farNow = Columns.times(shifts.farDrag(), all);
    double[] far = new double[n];
    for (int k = 0; k < n; k++) {
      far[k] = all[k] * farNow[k] - straightLift[k] * farBefore[k];
    }
    double difference = 0;
    List<WingLoad> loads = new ArrayList<>(straight.size());
    for (int w = 0; w < straight.size(); w++) {
      WingLoad load = load(w, turns, onsets[w], all, angle, far);
      SurfaceFlow before = straight.get(w);
      difference += load.boundDrag() - before.boundDrag();
      difference -= load.farFieldDrag() - before.farFieldDrag();
      loads.add(load);
    }
    // As in Lattice.flows: what strips and wake differ by acts at the front wing's root.
    WingLoad front = loads.get(0);
    double above = coupling.wings().get(0).strips.above(0, at);
    loads.set(
        0,
        new WingLoad(
            front.force().plus(PlaneForce.at(difference, 0, 0, above)),
            front.boundDrag(),
            front.farFieldDrag(),
            front.profileDrag(),
            front.onset(),
            front.stripLift(),
            front.stripAngle(),
            front.stalled()));
    return loads;
  }

  private WingLoad load(
      int w, double[] turns, double onset, double[] all, double[] angle, double[] farMore) {
    StripPolars p = coupling.wings().get(w);
    Strips s = p.strips;
    SurfaceFlow before = straight.get(w);
    int first = coupling.first(w);
    double up = StripTurns.row(shifts.up(), w, turns);
    double noseUp = StripTurns.row(shifts.noseUp(), w, turns);
    double forward = 0;
    double bound = 0;
    double far = 0;
    double level = boundOverStrips(w);
    double[] own = new double[s.count];
    double[] ownAngle = new double[s.count];
    double[] stream = new double[s.count];
    for (int i = 0; i < s.count; i++) {
      int k = first + i;
      stream[i] = coupling.stream(k);
      own[i] = all[k] / stream[i];
      ownAngle[i] = angle[k];
      double area = s.area(i);
      double turn = own[i] / p.liftSlope[i] + p.zeroLiftAngle[i] - angle[k];
      // What flows to the strip from below besides the stream, before and now.
      double washBefore = straightLift[k] / p.liftSlope[i] - crossing[k];
      double wash = all[k] / p.liftSlope[i] - stream[i] * (crossing[k] + turn) - onset;
      double more = level * area * (all[k] * wash - straightLift[k] * washBefore);
      bound -= more;
      double pull = more + area * all[k] * onset;
      forward += pull;
      noseUp -= pull * s.above(i, at);
      far += farMore[k];
      double slower = area * (stream[i] - 1) * all[k];
      up += slower;
      noseUp += slower * s.ahead(i, at);
    }
    PlaneForce inner = mutual(w, all);
    PlaneForce viscous =
        StripForces.viscous(p, ownAngle, coupling.evenStream() ? null : stream, at);
    return new WingLoad(
        before.force().plus(new PlaneForce(forward, up, noseUp)).plus(inner).plus(viscous),
        before.boundDrag() + bound,
        before.farFieldDrag() + far,
        -viscous.forward(),
        onset,
        own,
        ownAngle,
        p.stall().stalled(ownAngle));
  }

  /**
   * Induced drag at the bound vortices over that from the wash that the strips' effective angles
   * tell of, both of the straight lines: some percent off 1, and 1 where there is no drag to go by.
   */
  private double boundOverStrips(int w) {
    StripPolars p = coupling.wings().get(w);
    double strips = 0;
    double area = 0;
    for (int i = 0; i < p.count(); i++) {
      int k = coupling.first(w) + i;
      area += p.strips.area(i);
      strips -=
          p.strips.area(i) * straightLift[k] * (straightLift[k] / p.liftSlope[i] - crossing[k]);
    }
    double small = LITTLE_DRAG * area;
    double square = small * small;
    return (straight.get(w).boundDrag() * strips + square) / (strips * strips + square);
  }

  /**
   * Lift that the wing's vortices owe to each other's velocity along the stream, a few percent of
   * all. It goes with the square of the lift; the shifts have its growth with the old velocities,
   * and here is the other half.
   */
  private PlaneForce mutual(int w, double[] all) {
    Strips s = coupling.wings().get(w).strips;
    double area = 0;
    double lift = 0;
    double square = 0;
    double product = 0;
    double own = 0;
    double ahead = 0;
    for (int i = 0; i < s.count; i++) {
      int k = coupling.first(w) + i;
      double strip = s.area(i);
      area += strip;
      lift += strip * straightLift[k];
      square += strip * straightLift[k] * straightLift[k];
      product += strip * straightLift[k] * all[k];
      own += strip * all[k] * all[k];
      ahead += strip * s.ahead(i, at);
    }
    double mutual = straight.get(w).force().up() - lift;
    double more = mutual * (own - product) / (square + LITTLE_LIFT * LITTLE_LIFT * area);
    return new PlaneForce(0, more, more * ahead / area);
  }
}
