package trimwright.kernel.section;

import java.util.Arrays;
import java.util.Locale;
import trimwright.kernel.numeric.CubicSpline;

/**
 * Points of an outline, put in order: chord from (0, 0) to (1, 0), upper surface first, closed,
 * each surface a smooth function of the distance along it.
 */
final class CoordinateOutline {
  private static final int FEWEST_POINTS = 15;

  /** Points nearer to each other than this are one point [chords]. */
  private static final double SAME = 1e-7;

  /** The widest trailing edge that is closed rather than refused [chords]. */
  private static final double WIDEST_TRAILING_EDGE = 0.03;

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

  /** Fine steps along each surface between which heights are read off [1]. */
  private static final int FINE_STEPS = 1000;

  /**
   * The mean line is fitted at these many steps of equal angle [1]: smooth against the file's
   * rounding.
   */
  private static final int MEAN_LINE_STEPS = 24;

  private final Side upper;
  private final Side lower;

  private CoordinateOutline(Side upper, Side lower) {
    this.upper = upper;
    this.lower = lower;
  }

  /**
   * Puts an outline in order.
   *
   * @throws IllegalArgumentException if the points do not describe one section, saying what is
   *     wrong
   */
  static CoordinateOutline of(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalArgumentException(
          "an outline must have as many x as y, had " + x.length + " and " + y.length);
    }
    double[][] points = distinct(x, y);
    int n = points[0].length;
    if (n < FEWEST_POINTS) {
      throw new IllegalArgumentException(
          "an outline must have at least " + FEWEST_POINTS + " different points, had " + n);
    }
    if (area(points) < 0) {
      reverse(points[0]);
      reverse(points[1]);
    }
    return aligned(points);
  }

  /** A length for a sentence [chords]: four decimals tell where to look. */
  private static String shown(double length) {
    return String.format(Locale.ROOT, "%.4f", length);
  }

  /** Drops repeated neighbours, and refuses what is not a number. */
  private static double[][] distinct(double[] x, double[] y) {
    double size = 0;
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        throw new IllegalArgumentException(
            "point " + (i + 1) + " of an outline must be two numbers, was " + x[i] + ", " + y[i]);
      }
      size = Math.max(size, Math.hypot(x[i] - x[0], y[i] - y[0]));
    }
    double[] keptX = new double[x.length];
    double[] keptY = new double[x.length];
    int n = 0;
    for (int i = 0; i < x.length; i++) {
      if (n == 0 || Math.hypot(x[i] - keptX[n - 1], y[i] - keptY[n - 1]) > SAME * size) {
        keptX[n] = x[i];
        keptY[n] = y[i];
        n++;
      }
    }
    return new double[][] {Arrays.copyOf(keptX, n), Arrays.copyOf(keptY, n)};
  }

  /** Twice the enclosed area; positive when the points run over the upper surface first. */
  private static double area(double[][] p) {
    double sum = 0;
    int n = p[0].length;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      sum += p[0][i] * p[1][j] - p[0][j] * p[1][i];
    }
    return sum;
  }

  private static void reverse(double[] values) {
    for (int i = 0, j = values.length - 1; i < j; i++, j--) {
      double kept = values[i];
      values[i] = values[j];
      values[j] = kept;
    }
  }

  private static CoordinateOutline aligned(double[][] p) {
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
    double nose = origin > 0 ? arc[origin] : furthest(splineX, splineY, arc, edgeX, edgeY);
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
              + shown(gap));
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
        Side.of(along, above, nose, 0, "upper"), Side.of(along, above, nose, arc[n - 1], "lower"));
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
   * Distance along the outline of the place furthest from a point: a coarse walk, then golden
   * sections.
   */
  private static double furthest(
      CubicSpline x, CubicSpline y, double[] arc, double fromX, double fromY) {
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
              + shown(thickness));
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
              + shown(distance)
              + " chords behind the leading edge");
    }
    double least = Math.min(COORDINATE_ROUNDING, NARROWEST_WEDGE * (1 - distance));
    if (gap < least) {
      double middle = 0.5 * (y[nose - k] + y[nose + k]);
      y[nose - k] = middle + 0.5 * least;
      y[nose + k] = middle - 0.5 * least;
    }
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

  /**
   * One surface, its coordinates as functions of the square root of the straight distance from the
   * leading edge: in that variable a round nose is smooth, and it grows steadily even where a
   * surface first runs a little forward.
   */
  private record Side(CubicSpline alongChord, CubicSpline aboveChord) {

    static Side of(CubicSpline along, CubicSpline above, double nose, double end, String which) {
      double[] root = new double[FINE_STEPS + 1];
      double[] x = new double[FINE_STEPS + 1];
      double[] y = new double[FINE_STEPS + 1];
      int n = 1;
      for (int i = 1; i <= FINE_STEPS; i++) {
        double share = 0.5 * (1 - Math.cos(Math.PI * i / FINE_STEPS));
        double s = nose + (end - nose) * share;
        double behind = along.value(s);
        double up = above.value(s);
        double place = Math.sqrt(Math.hypot(behind, up));
        if (place <= root[n - 1]) {
          throw new IllegalArgumentException(
              "the "
                  + which
                  + " surface of an outline must run from edge to edge without turning back, turned at "
                  + shown(behind)
                  + " chords behind the leading edge");
        }
        root[n] = place;
        x[n] = behind;
        y[n] = up;
        n++;
      }
      // An open trailing edge is closed by a wedge: its two ends lie half a gap off the chord
      // line's end.
      double edgeX = x[n - 1] - 1;
      double edgeY = y[n - 1];
      double reach = root[n - 1];
      for (int i = 1; i < n; i++) {
        root[i] /= reach;
        double share = root[i] * root[i];
        x[i] -= edgeX * share;
        y[i] -= edgeY * share;
      }
      return new Side(CubicSpline.natural(root, x), CubicSpline.natural(root, y));
    }

    double along(double distance) {
      return alongChord.value(Math.sqrt(distance));
    }

    double above(double distance) {
      return aboveChord.value(Math.sqrt(distance));
    }
  }
}
