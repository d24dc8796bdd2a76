package trimwright.kernel.surface;

import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Sections;

/**
 * The sections of one wing at one speed, strip by strip: how far each leaves its straight line, and
 * where it stalls. The wing stalls where its first strip reaches its section's largest lift (the
 * critical-section method of R. F. Anderson, NACA Report 572, 1936; method recalled, report not in
 * hand).
 *
 * <p>Immutable; may be shared between threads.
 */
public final class StripPolars {
  final Strips strips;
  final Polar[] polar;

  /** Straight line of each strip. */
  final double[] zeroLiftAngle;

  final double[] liftSlope;

  /** See {@link SpanSmoothing#matrix}. */
  final double[] smoothing;

  private final StallAngles stall;
  private final double[] most;
  private final double[] least;

  StripPolars(Strips strips, double[] smoothing, Finish finish, double reynoldsPerMetre) {
    this.strips = strips;
    this.smoothing = smoothing;
    int n = strips.count;
    polar = new Polar[n];
    most = new double[n];
    least = new double[n];
    double[] highest = new double[n];
    double[] lowest = new double[n];
    zeroLiftAngle = new double[n];
    liftSlope = new double[n];
    for (int k = 0; k < n; k++) {
      polar[k] =
          Sections.between(
              strips.section[k],
              strips.outerSection[k],
              strips.blend[k],
              reynoldsPerMetre * strips.chord[k],
              finish);
      highest[k] = polar[k].angleOfMaximumLift();
      lowest[k] = polar[k].angleOfMinimumLift();
      most[k] = polar[k].lift(highest[k]);
      least[k] = polar[k].lift(lowest[k]);
      zeroLiftAngle[k] = strips.zeroLiftAngle(k);
      liftSlope[k] = strips.liftSlope(k);
    }
    stall = new StallAngles(zeroLiftAngle, highest, lowest);
  }

  private StripPolars(StripPolars of, double turn) {
    strips = of.strips;
    smoothing = of.smoothing;
    zeroLiftAngle = of.zeroLiftAngle;
    liftSlope = of.liftSlope;
    most = of.most;
    least = of.least;
    int n = strips.count;
    polar = new Polar[n];
    double[] highest = new double[n];
    double[] lowest = new double[n];
    double[] noLift = new double[n];
    for (int k = 0; k < n; k++) {
      polar[k] = new TurnedPolar(of.polar[k], turn);
      highest[k] = of.stall.highest()[k] - turn;
      lowest[k] = of.stall.lowest()[k] - turn;
      noLift[k] = of.stall.zeroLiftAngle()[k] - turn;
    }
    stall = new StallAngles(noLift, highest, lowest);
  }

  /**
   * The same sections turned in their strips, in a lattice that is not: a turn of the whole wing
   * about its strips' quarter chords, without a lattice of its own. Angles count from where the
   * chord lines would be without the turn.
   *
   * @param angle leading edge up positive, a few degrees [rad]
   * @return other sections
   */
  StripPolars turned(double angle) {
    return new StripPolars(this, angle);
  }

  /** Number of strips on one half. */
  public int count() {
    return strips.count;
  }

  /**
   * Angles of the strips if every section followed its straight line.
   *
   * @param stripLift lift coefficients, see {@link SurfaceFlow#stripLift}
   * @return effective angles of attack [rad]
   */
  public double[] straightAngles(double[] stripLift) {
    double[] angle = new double[strips.count];
    for (int k = 0; k < angle.length; k++) {
      angle[k] = stripLift[k] / liftSlope[k] + zeroLiftAngle[k];
    }
    return angle;
  }

  /**
   * Drag coefficient of a strip's section [1].
   *
   * @param strip counted from the root
   * @param angle effective angle of attack [rad]
   */
  public double drag(int strip, double angle) {
    return polar[strip].dragAt(angle);
  }

  /** Where the strips stall. */
  public StallAngles stall() {
    return stall;
  }

  /** Whether a strip is past either of its section's stalls at an angle. */
  boolean stalled(int k, double angle) {
    return angle > stall.highest()[k] || angle < stall.lowest()[k];
  }

  /** Lift at an angle, past a stall the lift at the stall. */
  double kept(int k, double angle, double lift) {
    if (angle > stall.highest()[k]) {
      return most[k];
    }
    return angle < stall.lowest()[k] ? least[k] : lift;
  }
}
