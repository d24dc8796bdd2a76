package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.kernel.section.Polar;

/**
 * Brings the lattice, which is linear, and the strips' sections, which are not, into agreement at
 * one speed.
 *
 * <p><b>Equations.</b> Every strip's line of no lift is turned by an angle d (nose up positive)
 * until the lift that the lattice gives it, cl, is its section's at the strip's effective angle cl
 * / a0 + alpha0 - d, where a0 and alpha0 are slope and angle of no lift that the lattice was built
 * with. The effective angle is that at which the section has its lift in two-dimensional flow. The
 * residual is what is left of the difference. What a section loses past its largest lift is evened
 * out along the span as {@link SpanSmoothing} says; without that the answers past the stall are
 * many and depend on the strips' width. Coupling by a shift of angle is that of C. P. van Dam
 * (Progress in Aerospace Sciences 38, 2002) and, as added camber, of S. N. Mukherjee and A.
 * Gopalarathnam (Journal of Aircraft 43, 2006); both from memory.
 *
 * <p><b>Forces.</b> Lift and moment change with the turns as the lattice does. Drag changes by each
 * strip's lift times the wash that its effective angle tells of; the sum of it over all wings is
 * that of the wake far behind, the difference being given to the front wing's root as {@link
 * Lattice#flows} does. Sections add drag and moment at their effective angles.
 *
 * <p><b>Other flow</b> at the wings may be added: an onset from below that follows the wings' lift
 * ({@link #withOnset}), and a slower stream at some strips ({@link #withStreams}).
 *
 * <p>Where no section leaves its straight line and nothing else flows, the lattice's answer stands
 * bit for bit. Effective angles count the lattice's sine of an angle as the angle: 0.5 % at 10
 * degrees, 2 % at 20. Immutable; may be shared between threads.
 */
public final class StripCoupling {
  private final List<StripPolars> wings;
  private final int n;
  private final int[] first;
  private final Polar[] polar;
  private final double[] zeroLiftAngle;
  private final double[] liftSlope;

  /** Rows of onset per lift [1/m²] and of what is added [rad]; null where there is none. */
  private final double[][] perLift;

  private final double[] added;

  /** Speed of each strip's stream over that of the undisturbed one; null where all are 1. */
  private final double[] stream;

  private StripCoupling(
      List<StripPolars> wings, double[][] perLift, double[] added, double[] stream) {
    this.wings = wings;
    this.perLift = perLift;
    this.added = added;
    this.stream = stream;
    first = new int[wings.size() + 1];
    for (int w = 0; w < wings.size(); w++) {
      first[w + 1] = first[w] + wings.get(w).count();
    }
    n = first[wings.size()];
    polar = new Polar[n];
    zeroLiftAngle = new double[n];
    liftSlope = new double[n];
    for (int w = 0; w < wings.size(); w++) {
      StripPolars p = wings.get(w);
      System.arraycopy(p.polar, 0, polar, first[w], p.count());
      System.arraycopy(p.zeroLiftAngle, 0, zeroLiftAngle, first[w], p.count());
      System.arraycopy(p.liftSlope, 0, liftSlope, first[w], p.count());
    }
  }

  /**
   * A coupling in an otherwise undisturbed stream.
   *
   * @param wings sections at the speed, from the front to the back, as in the lattice
   * @return the coupling
   */
  public static StripCoupling of(List<StripPolars> wings) {
    return new StripCoupling(List.copyOf(wings), null, null, null);
  }

  /**
   * The same with more flow from below at each wing: the sum over all wings j of {@code
   * perLift[i][j]} times wing j's lift over the dynamic pressure, and {@code added[i]}. It turns
   * wing i's lift: from below it pulls forward.
   *
   * @param perLift angle per lift over dynamic pressure [rad/m²]
   * @param added angle [rad]
   * @return another coupling
   * @throws IllegalArgumentException if there is not one row, column and angle per wing
   */
  public StripCoupling withOnset(double[][] perLift, double[] added) {
    int count = wings.size();
    if (perLift.length != count
        || added.length != count
        || Arrays.stream(perLift).anyMatch(row -> row.length != count)) {
      throw new IllegalArgumentException("onset must have one row and column per wing: " + count);
    }
    double[][] rows = Arrays.stream(perLift).map(double[]::clone).toArray(double[][]::new);
    return new StripCoupling(wings, rows, added.clone(), stream);
  }

  /**
   * The same with one wing turned: its sections take another angle in their strips, the lattice
   * stays. Left out is that the panels move in the other wings' wash. On a stabilizer turned by up
   * to 3 degrees that moves the craft's foot pressure by 0.3 mm in 95 of 100 random setups, by 1 mm
   * in 99, and by up to 5 mm where the front wing's wake just passes. Strip angles then count from
   * where the chord lines would be without the turn.
   *
   * @param wing which, counted from the front
   * @param angle leading edge up positive, a few degrees [rad]
   * @return another coupling; this one where the angle is 0
   */
  public StripCoupling withTurn(int wing, double angle) {
    if (angle == 0) {
      return this;
    }
    List<StripPolars> other = new ArrayList<>(wings);
    other.set(wing, wings.get(wing).turned(angle));
    return new StripCoupling(List.copyOf(other), perLift, added, stream);
  }

  /**
   * The same with strips in streams of another dynamic pressure, such as in another wing's wake.
   * Reynolds numbers stay those of the undisturbed stream.
   *
   * @param factor dynamic pressure over the undisturbed one for each wing's strips from root to
   *     tip, above 0 [1]
   * @return another coupling
   * @throws IllegalArgumentException if there is not one number above 0 for each strip
   */
  public StripCoupling withStreams(double[][] factor) {
    double[] speeds = new double[n];
    int k = 0;
    boolean all = true;
    boolean allowed = true;
    for (double[] wing : factor) {
      for (double f : wing) {
        allowed &= f > 0 && k < n;
        if (allowed) {
          speeds[k] = Math.sqrt(f);
          all &= speeds[k++] == 1;
        }
      }
    }
    if (!allowed || k != n) {
      throw new IllegalArgumentException("streams must have one factor above 0 per strip: " + n);
    }
    return new StripCoupling(wings, perLift, added, all ? null : speeds);
  }

  /**
   * The agreement at a pitch.
   *
   * @param response the lattice's answer with the same wings
   * @param pitch of the fuselage [rad]
   * @return loads, with how well they agree
   */
  public CoupledFlow solve(SurfaceResponse response, double pitch) {
    return solve(response, pitch, null);
  }

  /**
   * The agreement at a pitch, looked for from another's departures.
   *
   * @param response the lattice's answer with the same wings
   * @param pitch of the fuselage [rad]
   * @param start departures of a solution nearby, see {@link CoupledFlow#departure}; null for the
   *     straight lines
   * @return loads, with how well they agree
   */
  public CoupledFlow solve(SurfaceResponse response, double pitch, double[] start) {
    List<SurfaceFlow> straight = new ArrayList<>(wings.size());
    double[] lift = new double[n];
    for (int w = 0; w < wings.size(); w++) {
      SurfaceFlow flow = response.at(w, pitch);
      straight.add(flow);
      System.arraycopy(flow.stripLift(), 0, lift, first[w], flow.stripLift().length);
    }
    double[] angle = new double[n];
    boolean bent = perLift != null || stream != null;
    for (int k = 0; k < n; k++) {
      angle[k] = lift[k] / liftSlope[k] + zeroLiftAngle[k];
      // The same expression as a straight section's own, so that the two agree bit for bit.
      bent |= polar[k].lift(angle[k]) != liftSlope[k] * (angle[k] - zeroLiftAngle[k]);
    }
    if (!bent) {
      return new CoupledFlow(
          StripForces.straight(wings, straight, angle, pitch), new double[n], 0, 0);
    }
    return new StripTurns(this, response.shifts(pitch), straight, lift, pitch).solve(start);
  }

  /** Sections of the wings, from the front to the back. */
  public List<StripPolars> wings() {
    return wings;
  }

  int first(int wing) {
    return first[wing];
  }

  int strips() {
    return n;
  }

  Polar[] polar() {
    return polar;
  }

  double[] zeroLiftAngle() {
    return zeroLiftAngle;
  }

  double[] liftSlope() {
    return liftSlope;
  }

  double[][] perLift() {
    return perLift;
  }

  double[] added() {
    return added;
  }

  double stream(int strip) {
    return stream == null ? 1 : stream[strip];
  }

  boolean evenStream() {
    return stream == null;
  }
}
