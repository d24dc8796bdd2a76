package trimwright.kernel.surface;

/**
 * One whole surface as a grid of points in foil axes, for {@link TurnLattice}: both halves of a
 * wing from port to starboard, or a mast from its foot up to the surface of the water. Coordinates
 * are x, y, z one after the other.
 */
final class TurnSheet {
  /** Lift slope of a mast's section, a little below a plate's 2 pi: chosen. */
  private static final double MAST_SLOPE = 6.0;

  /** Strips of a mast. Chosen; twice as many change its side force by under 2 %. */
  private static final int MAST_STRIPS = 5;

  final int count;
  final int along;

  /** Starts of the bound vortices: along rows of count + 1 points. */
  final double[][] bound;

  /** Points of the trailing edge. */
  final double[] trail;

  /** Control points, normals and middles of the bound vortices, by row. */
  final double[][] control;

  final double[][] normal;
  final double[] chord;

  /** Width of a strip along the bound vortex's span, without its sweep [m]. */
  final double[] width;

  /** Where a strip's centre lies between its two edges [1]. */
  final double[] middle;

  final double[] liftSlope;
  final double[] zeroLift;
  final double[] momentAtZeroLift;

  /** The wing's strips; null for a mast. */
  final Strips strips;

  private TurnSheet(int count, int along, Strips strips) {
    this.count = count;
    this.along = along;
    this.strips = strips;
    bound = new double[along][3 * (count + 1)];
    trail = new double[3 * (count + 1)];
    control = new double[along][3 * count];
    normal = new double[along][3 * count];
    chord = new double[count];
    width = new double[count];
    middle = new double[count];
    liftSlope = new double[count];
    zeroLift = new double[count];
    momentAtZeroLift = new double[count];
  }

  /** Middle of a bound vortex, from a row of starts. */
  void middle(double[] row, int k, double[] out) {
    for (int c = 0; c < 3; c++) {
      out[c] = row[3 * k + c] + middle[k] * (row[3 * k + 3 + c] - row[3 * k + c]);
    }
  }

  /** Starts of the bound vortices in water axes. */
  double[][] boundIn(TurnMotion motion) {
    double[][] placed = new double[along][3 * (count + 1)];
    for (int m = 0; m < along; m++) {
      double[] b = bound[m];
      for (int e = 0; e <= count; e++) {
        motion.place(b[3 * e], b[3 * e + 1], b[3 * e + 2], placed[m], 3 * e);
      }
    }
    return placed;
  }

  /** Which of the wing's strips a strip is, counted from the root. */
  int half(int k) {
    int n = count / 2;
    return k < n ? n - 1 - k : k - n;
  }

  static TurnSheet wing(PlacedWing wing) {
    Strips s = new Strips(wing);
    int n = s.count;
    TurnSheet sheet = new TurnSheet(2 * n, s.along, s);
    for (int e = 0; e <= 2 * n; e++) {
      int k = Math.abs(e - n);
      double y = e < n ? -s.edgeY[k] : s.edgeY[k];
      for (int m = 0; m < s.along; m++) {
        double at = (m + 0.25) / s.along;
        put(sheet.bound[m], e, s.edgeAhead(k, at), y, -s.edgeAbove(k, at));
      }
      put(sheet.trail, e, s.edgeAhead(k, 1), y, -s.edgeAbove(k, 1));
    }
    for (int p = 0; p < 2 * n; p++) {
      int k = sheet.half(p);
      double y = p < n ? -s.centreY[k] : s.centreY[k];
      sheet.chord[p] = s.chord[k];
      sheet.width[p] = s.width[k];
      double inner = (s.centreY[k] - s.edgeY[k]) / s.width[k];
      sheet.middle[p] = p < n ? 1 - inner : inner;
      sheet.liftSlope[p] = s.liftSlope(k);
      sheet.zeroLift[p] = s.zeroLiftAngle(k);
      sheet.momentAtZeroLift[p] = s.momentAtZeroLift(k);
      for (int m = 0; m < s.along; m++) {
        double at = (m + 0.75) / s.along;
        put(sheet.control[m], p, s.centreAhead(k, at), y, -s.centreAbove(k, at));
        sheet.setNormal(m, p, s.incidence[k] - s.zeroLiftAngle(k));
      }
    }
    return sheet;
  }

  /**
   * The wetted part of a mast, as a plate.
   *
   * @param rake foot forward positive [rad]
   * @param wetted length under water [m]
   * @param chord [m]
   */
  static TurnSheet mast(double rake, double wetted, double chord) {
    TurnSheet sheet = new TurnSheet(MAST_STRIPS, 1, null);
    for (int e = 0; e <= MAST_STRIPS; e++) {
      double up = wetted * e / MAST_STRIPS;
      double x = -up * Math.sin(rake);
      double z = -up * Math.cos(rake);
      put(sheet.bound[0], e, x + 0.25 * chord, 0, z);
      put(sheet.trail, e, x - 0.5 * chord, 0, z);
    }
    for (int p = 0; p < MAST_STRIPS; p++) {
      double up = wetted * (p + 0.5) / MAST_STRIPS;
      put(sheet.control[0], p, -up * Math.sin(rake) - 0.25 * chord, 0, -up * Math.cos(rake));
      sheet.chord[p] = chord;
      sheet.width[p] = wetted / MAST_STRIPS;
      sheet.middle[p] = 0.5;
      sheet.liftSlope[p] = MAST_SLOPE;
      sheet.setNormal(0, p, 0);
    }
    return sheet;
  }

  /** Square to the line of no lift and to the bound vortex, to the side to which it lifts. */
  private void setNormal(int row, int p, double angle) {
    double[] b = bound[row];
    double sx = b[3 * p + 3] - b[3 * p];
    double sy = b[3 * p + 4] - b[3 * p + 1];
    double sz = b[3 * p + 5] - b[3 * p + 2];
    double ct = Math.cos(angle);
    double st = Math.sin(angle);
    double nx = -sy * st;
    double ny = sz * ct + sx * st;
    double nz = -sy * ct;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    put(normal[row], p, nx / length, ny / length, nz / length);
  }

  private static void put(double[] to, int i, double x, double y, double z) {
    to[3 * i] = x;
    to[3 * i + 1] = y;
    to[3 * i + 2] = z;
  }
}
