package trimwright.kernel.section;

import java.util.HashMap;
import java.util.Map;
import trimwright.kernel.numeric.CubicSpline;

/**
 * A section prepared for viscous flow: panels laid anew on its outline, the potential flow's
 * matrices solved, and the response of edge speeds to displacement kept for every angle of attack
 * asked for. The same for all Reynolds numbers and finishes. A workspace for one thread.
 */
public final class ViscousSurface {
  /** Panels on each side. */
  static final int PANELS = 48;

  /**
   * Panel lengths along each side go as 1 - cos up to this angle, with a part that is even: fine
   * and without a corner at the leading edge, coarse in the middle, fine again at the rear.
   */
  private static final double LAST = 1.6 * Math.PI;

  private static final double EVEN = 0.1;

  private final SurfacePotential potential;
  private final double[][] blown;
  private final double[] arc;
  private final double zeroLiftAngle;
  private final Map<Double, EdgeSpeeds> kept = new HashMap<>();

  private ViscousSurface(SurfacePotential coarse, SurfacePotential fine) {
    potential = coarse;
    potential.refine(fine);
    blown = potential.blown();
    arc = new double[potential.panels + 1];
    for (int i = 1; i < arc.length; i++) {
      arc[i] = arc[i - 1] + potential.length[i - 1];
    }
    zeroLiftAngle = -Math.atan2(potential.jump(potential.along), potential.jump(potential.across));
  }

  /**
   * Prepares a section.
   *
   * @param shape its outline
   */
  public static ViscousSurface of(SectionShape shape) {
    return of(shape, PANELS);
  }

  static ViscousSurface of(SectionShape shape, int panels) {
    double[] x = shape.x();
    double[] y = shape.y();
    int half = x.length / 2;
    // Mean of both sides' ways from the leading edge: coordinates are smooth in it, and points that
    // face each other go on facing, which even doublets need where the surfaces are close.
    double[] at = new double[x.length];
    for (int i = 1; i <= half; i++) {
      int up = half - i;
      int low = half + i;
      double above = Math.hypot(x[up] - x[up + 1], y[up] - y[up + 1]);
      double below = Math.hypot(x[low] - x[low - 1], y[low] - y[low - 1]);
      at[low] = at[low - 1] + 0.5 * (above + below);
      at[up] = -at[low];
    }
    CubicSpline xs = CubicSpline.natural(at, x);
    CubicSpline ys = CubicSpline.natural(at, y);
    double side = at[at.length - 1];
    return new ViscousSurface(points(xs, ys, side, panels), points(xs, ys, side, 2 * panels));
  }

  private static SurfacePotential points(CubicSpline xs, CubicSpline ys, double side, int panels) {
    double[] px = new double[2 * panels + 1];
    double[] py = new double[2 * panels + 1];
    for (int i = 1; i < px.length - 1; i++) {
      double f = Math.abs(i - panels) / (double) panels;
      double waves = (f - Math.sin(LAST * f) / LAST) / (1 - Math.sin(LAST) / LAST);
      double way = side * (EVEN * f + (1 - EVEN) * waves);
      px[i] = xs.value(i < panels ? -way : way);
      py[i] = ys.value(i < panels ? -way : way);
    }
    px[0] = 1;
    px[2 * panels] = 1;
    return new SurfacePotential(px, py);
  }

  EdgeSpeeds speeds(double angle) {
    return kept.computeIfAbsent(angle, a -> new EdgeSpeeds(potential, blown, a, zeroLiftAngle));
  }

  int panels() {
    return potential.panels;
  }

  int stations() {
    return potential.panels + 1 + EdgeSpeeds.wakeStations();
  }

  /** Way along the outline from the trailing edge over the upper side to a point. */
  double arc(int i) {
    return arc[i];
  }

  /** The same to a place on the upper side, chords behind the leading edge. */
  double arcAbove(double place) {
    int i = potential.panels / 2;
    while (i > 0 && potential.x[i] < place) {
      i--;
    }
    return between(i + 1, i, place);
  }

  /** The same to a place on the lower side. */
  double arcBelow(double place) {
    int i = potential.panels / 2;
    while (i < potential.panels && potential.x[i] < place) {
      i++;
    }
    return between(i - 1, i, place);
  }

  private double between(int before, int after, double place) {
    double run = potential.x[after] - potential.x[before];
    double share = Math.max(0, Math.min(1, (place - potential.x[before]) / run));
    return arc[before] + share * (arc[after] - arc[before]);
  }

  /** Chords behind the leading edge of a way along the outline; 1 if that is not a number. */
  double placeAt(double way, boolean above) {
    if (Double.isNaN(way)) {
      return 1;
    }
    int i = 0;
    while (i < potential.panels - 1 && arc[i + 1] < way) {
      i++;
    }
    double share = (way - arc[i]) / (arc[i + 1] - arc[i]);
    return potential.x[i] + share * (potential.x[i + 1] - potential.x[i]);
  }

  /** Lift and quarter-chord moment coefficients of surface speeds. */
  double[] force(double[] speed, double angle) {
    double fx = 0;
    double fy = 0;
    double moment = 0;
    for (int i = 0; i < potential.panels; i++) {
      double dx = potential.x[i + 1] - potential.x[i];
      double dy = potential.y[i + 1] - potential.y[i];
      // Mean of 1 - pressure coefficient for a speed that runs straight between the points.
      double suction =
          (speed[i] * speed[i] + speed[i] * speed[i + 1] + speed[i + 1] * speed[i + 1]) / 3;
      // Outward is to the right of the outline's order.
      double px = suction * dy;
      double py = -suction * dx;
      fx += px;
      fy += py;
      moment += (potential.middleX[i] - 0.25) * py - potential.middleY[i] * px;
    }
    return new double[] {fy * Math.cos(angle) - fx * Math.sin(angle), -moment};
  }
}
