package trimwright.kernel.section;

import trimwright.kernel.numeric.LinearSystem;

/**
 * Inviscid flow about a section: straight panels between the outline's points carry vorticity that
 * varies linearly along each panel and is continuous from one to the next; no flow passes the
 * middle of a panel.
 *
 * <p>At the trailing edge the strengths of the two surfaces cancel (Kutta condition). The
 * formulation alone becomes indeterminate where the surfaces nearly touch: a cusped, cambered
 * trailing edge gave a zero-lift angle several per cent off that did not improve with more panels.
 * Over the last four panels of each surface the two conditions are therefore replaced by the one
 * that decides the circulation (their difference) and by a straight course of the difference of
 * speed between the surfaces. With that the error falls with the square of the panel length for
 * cusped and for wedge-shaped trailing edges.
 *
 * <p>The flow is linear in the onset flow, so that two solutions (onset along and across the chord)
 * give every angle. Unit onset speed and chord. Sources: Kuethe and Chow, Foundations of
 * Aerodynamics (3rd edition 1976), section 5.10, for the panels; the trailing edge is our own.
 * Immutable.
 */
public final class PanelMethod {
  /** Panels on each surface, counted from the trailing edge, whose conditions are combined. */
  private static final int COMBINED = 4;

  private final double[] x;
  private final double[] y;
  private final double[] along;
  private final double[] across;
  private final double liftAlong;
  private final double liftAcross;
  private final double[] moment;

  private PanelMethod(SectionShape shape) {
    x = shape.x();
    y = shape.y();
    int panels = x.length - 1;
    along = new double[panels + 1];
    across = new double[panels + 1];
    solve();
    liftAlong = lift(along);
    liftAcross = lift(across);
    moment =
        new double[] {
          quarterChordMoment(along, along),
          quarterChordMoment(along, across),
          quarterChordMoment(across, across)
        };
  }

  /**
   * Solves the flow about an outline, whose points become the panels' ends.
   *
   * @param shape outline, at least 41 points for useful numbers
   * @return the solution
   */
  public static PanelMethod of(SectionShape shape) {
    return new PanelMethod(shape);
  }

  private void solve() {
    int panels = x.length - 1;
    int size = panels + 1;
    double[] matrix = new double[size * size];
    double[] alongSide = new double[panels + 1];
    double[] acrossSide = new double[panels + 1];
    double[] pair = new double[4];
    for (int i = 0; i < panels; i++) {
      double length = length(i);
      double normalX = -(y[i + 1] - y[i]) / length;
      double normalY = (x[i + 1] - x[i]) / length;
      for (int j = 0; j < panels; j++) {
        influence(j, 0.5 * (x[i] + x[i + 1]), 0.5 * (y[i] + y[i + 1]), i == j, pair);
        matrix[i * size + j] += pair[0] * normalX + pair[1] * normalY;
        matrix[i * size + j + 1] += pair[2] * normalX + pair[3] * normalY;
      }
      alongSide[i] = -normalX;
      acrossSide[i] = -normalY;
    }
    matrix[panels * size] = 1;
    matrix[panels * size + panels] = 1;
    combineAtTrailingEdge(matrix, alongSide, acrossSide);
    LinearSystem system = LinearSystem.factor(matrix, size);
    system.solve(alongSide, along);
    system.solve(acrossSide, across);
  }

  private double length(int panel) {
    return Math.hypot(x[panel + 1] - x[panel], y[panel + 1] - y[panel]);
  }

  /**
   * Velocity at a point per unit strength at the panel's first end (result 0, 1) and at its second
   * end (2, 3), the strength falling to nothing at the other end. Vorticity is positive
   * counter-clockwise.
   */
  private void influence(int panel, double px, double py, boolean own, double[] result) {
    double length = length(panel);
    double tx = (x[panel + 1] - x[panel]) / length;
    double ty = (y[panel + 1] - y[panel]) / length;
    double rx = px - x[panel];
    double ry = py - y[panel];
    double s = rx * tx + ry * ty;
    double n = ry * tx - rx * ty;
    double log = 0;
    double angle = 0;
    if (!own) {
      // On the panel's own middle the logarithm vanishes and the angle drops out of the flow across
      // the panel.
      log = 0.5 * Math.log(((s - length) * (s - length) + n * n) / (s * s + n * n));
      angle = Math.atan2(n * length, n * n + s * (s - length));
    }
    double scale = -1 / (2 * Math.PI);
    double u0 = scale * angle;
    double v0 = scale * log;
    double u1 = scale * (s * angle + n * log) / length;
    double v1 = scale * (s * log + length - n * angle) / length;
    result[0] = (u0 - u1) * tx - (v0 - v1) * ty;
    result[1] = (u0 - u1) * ty + (v0 - v1) * tx;
    result[2] = u1 * tx - v1 * ty;
    result[3] = u1 * ty + v1 * tx;
  }

  private void combineAtTrailingEdge(double[] matrix, double[] first, double[] second) {
    int panels = x.length - 1;
    int size = panels + 1;
    for (int k = 0; k < COMBINED; k++) {
      int mirror = panels - 1 - k;
      for (int j = 0; j <= panels; j++) {
        matrix[k * size + j] -= matrix[mirror * size + j];
        matrix[mirror * size + j] = 0;
      }
      first[k] -= first[mirror];
      second[k] -= second[mirror];
      first[mirror] = 0;
      second[mirror] = 0;
      // Both surfaces' lengths, so that a section upside down is the same flow mirrored.
      double step = length(k) + length(mirror);
      double next = length(k + 1) + length(mirror - 1);
      // Straight line through the values one and two points further on, continued to point k.
      double weight = (step + next) / next;
      int row = mirror * size;
      addDifference(matrix, row, k, 1);
      addDifference(matrix, row, k + 1, -weight);
      addDifference(matrix, row, k + 2, weight - 1);
    }
  }

  private void addDifference(double[] matrix, int row, int point, double weight) {
    matrix[row + point] += weight;
    matrix[row + x.length - 1 - point] -= weight;
  }

  /** Lift coefficient of a strength distribution: twice the clockwise circulation. */
  private double lift(double[] strength) {
    double circulation = 0;
    for (int i = 0; i < x.length - 1; i++) {
      circulation += 0.5 * (strength[i] + strength[i + 1]) * length(i);
    }
    return -2 * circulation;
  }

  /**
   * Part of the moment about the quarter chord that comes from the product of two strength
   * distributions, nose up positive. Pressure is 1 - strength², and the 1 presses evenly from all
   * sides; Simpson's rule is exact for the rest.
   */
  private double quarterChordMoment(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < x.length - 1; i++) {
      double dx = x[i + 1] - x[i];
      double dy = y[i + 1] - y[i];
      for (int part = 0; part <= 2; part++) {
        double f = 0.5 * part;
        double weight = part == 1 ? 4.0 / 6 : 1.0 / 6;
        double product = (a[i] + f * (a[i + 1] - a[i])) * (b[i] + f * (b[i + 1] - b[i]));
        double lever = x[i] + f * dx - 0.25;
        double height = y[i] + f * dy;
        // Suction acts outward: force (product dy, -product dx); nose-up moment -(lever fy - height
        // fx).
        sum += weight * product * (lever * dx + height * dy);
      }
    }
    return sum;
  }

  /**
   * Lift coefficient.
   *
   * @param angle angle of attack [rad]
   * @return lift coefficient [1]
   */
  public double lift(double angle) {
    return liftAlong * Math.cos(angle) + liftAcross * Math.sin(angle);
  }

  /** Angle of attack of no lift [rad]. */
  public double zeroLiftAngle() {
    return -Math.atan2(liftAlong, liftAcross);
  }

  /** Lift slope at zero lift [1/rad]; lift is this times the sine of the angle from zero lift. */
  public double liftSlope() {
    return Math.hypot(liftAlong, liftAcross);
  }

  /**
   * The angle of attack [rad] that gives a lift coefficient [1]; the nearest possible one where
   * none does.
   *
   * @param liftCoefficient lift coefficient [1]
   */
  public double angleOf(double liftCoefficient) {
    double sine = Math.max(-1, Math.min(1, liftCoefficient / liftSlope()));
    return zeroLiftAngle() + Math.asin(sine);
  }

  /**
   * Moment coefficient about the quarter chord, nose up positive, from the pressures.
   *
   * @param angle angle of attack [rad]
   * @return moment coefficient [1]
   */
  public double quarterChordMoment(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return moment[0] * c * c + 2 * moment[1] * c * s + moment[2] * s * s;
  }

  /** Moment coefficient at zero lift, nose up positive [1]. */
  public double momentAtZeroLift() {
    return quarterChordMoment(zeroLiftAngle());
  }

  /** Aerodynamic centre at zero lift, behind the leading edge [chords]. */
  public double aerodynamicCentre() {
    double a = zeroLiftAngle();
    double slope = (moment[2] - moment[0]) * Math.sin(2 * a) + 2 * moment[1] * Math.cos(2 * a);
    return 0.25 - slope / liftSlope();
  }

  /**
   * Speed along the surface over onset speed at each point of the outline, positive in the
   * outline's order (from the trailing edge over the upper side round to it again).
   *
   * @param angle angle of attack [rad]
   * @return speeds [1], a new array
   */
  public double[] surfaceSpeed(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double[] speed = new double[x.length];
    for (int i = 0; i < speed.length; i++) {
      // Inside the outline the fluid is at rest, so that the strength of the sheet is the speed
      // outside; a sheet
      // turning counter-clockwise drags its right-hand side, which is outside, in the order of the
      // points.
      speed[i] = along[i] * c + across[i] * s;
    }
    return speed;
  }

  /**
   * Lowest pressure coefficient at the outline's points.
   *
   * @param angle angle of attack [rad]
   * @return pressure coefficient [1]
   */
  public double minimumPressure(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double fastest = 0;
    for (int i = 0; i < x.length; i++) {
      fastest = Math.max(fastest, Math.abs(along[i] * c + across[i] * s));
    }
    return 1 - fastest * fastest;
  }
}
