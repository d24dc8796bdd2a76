package trimwright.kernel.section;

import java.util.List;
import trimwright.kernel.numeric.CubicSpline;

/**
 * Points of an outline, put in order: chord from (0, 0) to (1, 0), upper surface first, closed,
 * each surface a smooth function of the distance along it.
 */
final class CoordinateOutline {
  /** The widest trailing edge that is closed rather than refused [chords]. */
  private static final double WIDEST_TRAILING_EDGE = 0.03;

  /** A narrower gap between the ends is rounding, and needs no word [chords]. */
  private static final double OPEN = 2e-5;

  /** A smaller angle to the chord line is rounding, and needs no word [rad]. */
  private static final double UNTURNED = 1e-3;

  /**
   * How level with the trailing edge the nose of an outline lies that is drawn along x [chords].
   */
  private static final double LEVEL = 2e-4;

  /**
   * How much nearer to the trailing edge than the furthest place a drawn nose may lie [chords]:
   * 0.27 % for NACA 6424, less for thinner ones.
   */
  private static final double NOSE_REGION = 3e-3;

  /** What a file's rounding may take from or add to the thickness [chords]. */
  private static final double THICKNESS_ROUNDING = 5e-4;

  /** What rounding to four decimals does to the gap between the surfaces [chords]. */
  private static final double COORDINATE_ROUNDING = 1e-4;

  /** Gap over distance from the trailing edge that touching surfaces are given [1]. */
  private static final double NARROWEST_WEDGE = 2e-3;

  /**
   * The mean line is fitted at these many steps of equal angle [1]: smooth against the file's
   * rounding.
   */
  private static final int MEAN_LINE_STEPS = 24;

  private final OutlineSide upper;
  private final OutlineSide lower;

  private final List<OutlineRepair> repairs;

  private CoordinateOutline(OutlineSide upper, OutlineSide lower, List<OutlineRepair> repairs) {
    this.upper = upper;
    this.lower = lower;
    this.repairs = List.copyOf(repairs);
  }

  /**
   * Puts an outline in order.
   *
   * @throws IllegalArgumentException if the points do not describe one section, saying what is
   *     wrong
   */
  static CoordinateOutline of(double[] x, double[] y) {
    OutlinePoints points = OutlinePoints.of(x, y);
    return aligned(new double[][] {points.x(), points.y()}, points.repairs());
  }

  private static CoordinateOutline aligned(double[][] p, List<OutlineRepair> repairs) {
    int n = p[0].length;
    double[] arc = new double[n];
    for (int i = 1; i < n; i++) {
      arc[i] = arc[i - 1] + Math.hypot(p[0][i] - p[0][i - 1], p[1][i] - p[1][i - 1]);
    }
    CubicSpline splineX = CubicSpline.natural(arc, p[0]);
    CubicSpline splineY = CubicSpline.natural(arc, p[1]);
    double edgeX = 0.5 * (p[0][0] + p[0][n - 1]);
    double edgeY = 0.5 * (p[1][0] + p[1][n - 1]);
    int origin = findOrigin(p, edgeX, edgeY);
    double nose =
        origin > 0 ? arc[origin] : new OutlineNose(splineX, splineY, arc).place(edgeX, edgeY);
    double noseX = splineX.value(nose);
    double noseY = splineY.value(nose);
    double chord = Math.hypot(edgeX - noseX, edgeY - noseY);
    double gap = Math.hypot(p[0][0] - p[0][n - 1], p[1][0] - p[1][n - 1]) / chord;
    if (gap > WIDEST_TRAILING_EDGE) {
      throw new IllegalArgumentException(
          "an outline must run from the trailing edge round the leading edge to the trailing edge again,"
              + " its ends at most "
              + WIDEST_TRAILING_EDGE
              + " chords apart, were "
              + OutlinePoints.shown(gap));
    }
    if (gap > OPEN) {
      repairs.add(new OutlineRepair(OutlineRepair.Kind.CLOSED, 0, gap));
    }
    double angle = Math.atan2(edgeY - noseY, edgeX - noseX);
    if (Math.abs(angle) > UNTURNED) {
      repairs.add(new OutlineRepair(OutlineRepair.Kind.TURNED, 0, angle));
    }
    double cos = (edgeX - noseX) / (chord * chord);
    double sin = (edgeY - noseY) / (chord * chord);
    double[] alongChord = new double[n];
    double[] aboveChord = new double[n];
    for (int i = 0; i < n; i++) {
      double dx = p[0][i] - noseX;
      double dy = p[1][i] - noseY;
      alongChord[i] = dx * cos + dy * sin;
      aboveChord[i] = dy * cos - dx * sin;
    }
    CubicSpline along = CubicSpline.natural(arc, alongChord);
    CubicSpline above = CubicSpline.natural(arc, aboveChord);
    return new CoordinateOutline(
        OutlineSide.of(along, above, nose, 0, "upper"),
        OutlineSide.of(along, above, nose, arc[n - 1], "lower"),
        repairs);
  }

  /**
   * The point that is drawn as the nose, or 0 where none can be told: it lies level with the
   * trailing edge, and hardly nearer to it than the furthest one. An outline that is drawn along
   * its own axis, in any unit and any place, keeps that axis: the place furthest from the trailing
   * edge of a cambered section lies a little off its chord line, which for NACA 23012 would turn
   * the angles by a quarter of a degree.
   */
  private static int findOrigin(double[][] p, double edgeX, double edgeY) {
    int n = p[0].length;
    double size = 0;
    for (int i = 1; i < n - 1; i++) {
      size = Math.max(size, Math.hypot(p[0][i] - edgeX, p[1][i] - edgeY));
    }
    int origin = 0;
    double least = LEVEL * size;
    for (int i = 1; i < n - 1; i++) {
      double off = Math.abs(p[1][i] - edgeY);
      if (off < least && Math.abs(p[0][i] - edgeX) > (1 - NOSE_REGION) * size) {
        least = off;
        origin = i;
      }
    }
    return origin;
  }

  /**
   * The outline with new points, facing each other across the chord.
   *
   * @param panelsPerSide steps from edge to edge on each surface [1]
   * @throws IllegalArgumentException if the surfaces cross or the section is thinner than 1 % or
   *     thicker than 30 %
   */
  SectionShape shape(int panelsPerSide) {
    int n = panelsPerSide;
    double[] x = new double[2 * n + 1];
    double[] y = new double[2 * n + 1];
    x[0] = 1;
    x[2 * n] = 1;
    for (int k = 1; k < n; k++) {
      double distance = 0.5 * (1 - Math.cos(Math.PI * k / n));
      x[n - k] = upper.along(distance);
      x[n + k] = lower.along(distance);
      y[n - k] = upper.above(distance);
      y[n + k] = lower.above(distance);
      keepApart(x, y, n, k);
    }
    SectionShape shape = new SectionShape(x, y);
    double thickness = shape.thickness();
    if (!(thickness >= NacaShape.THINNEST - THICKNESS_ROUNDING
        && thickness <= NacaShape.THICKEST + THICKNESS_ROUNDING)) {
      throw new IllegalArgumentException(
          "section thickness must be "
              + NacaShape.THINNEST
              + " to "
              + NacaShape.THICKEST
              + " chords, was "
              + OutlinePoints.shown(thickness));
    }
    return shape;
  }

  /**
   * Refuses surfaces that cross by more than a file's rounding, and holds those that touch apart by
   * a hair's breadth that closes towards the trailing edge: a cusp printed with five decimals has
   * no gap left near its end.
   */
  private static void keepApart(double[] x, double[] y, int nose, int k) {
    double distance = 0.5 * (x[nose - k] + x[nose + k]);
    double gap = y[nose - k] - y[nose + k];
    if (gap < -COORDINATE_ROUNDING) {
      throw new IllegalArgumentException(
          "the surfaces of an outline must not cross, crossed at "
              + OutlinePoints.shown(distance)
              + " chords behind the leading edge");
    }
    double least = Math.min(COORDINATE_ROUNDING, NARROWEST_WEDGE * (1 - distance));
    if (gap < least) {
      double middle = 0.5 * (y[nose - k] + y[nose + k]);
      y[nose - k] = middle + 0.5 * least;
      y[nose + k] = middle - 0.5 * least;
    }
  }

  /** What was put right. */
  List<OutlineRepair> repairs() {
    return repairs;
  }

  /** The mean line, a spline through the middles of the two surfaces. */
  MeanLine meanLine() {
    double[] at = new double[MEAN_LINE_STEPS + 1];
    double[] middle = new double[MEAN_LINE_STEPS + 1];
    at[MEAN_LINE_STEPS] = 1;
    for (int i = 1; i < MEAN_LINE_STEPS; i++) {
      double distance = 0.5 * (1 - Math.cos(Math.PI * i / MEAN_LINE_STEPS));
      at[i] = 0.5 * (upper.along(distance) + lower.along(distance));
      middle[i] = 0.5 * (upper.above(distance) + lower.above(distance));
    }
    CubicSpline spline = CubicSpline.natural(at, middle);
    return new MeanLine() {
      @Override
      public double height(double x) {
        return spline.value(x);
      }

      @Override
      public double slope(double x) {
        return spline.slope(x);
      }
    };
  }
}
