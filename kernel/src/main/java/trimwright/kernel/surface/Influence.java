package trimwright.kernel.surface;

/**
 * Velocities that the starboard horseshoe vortices induce, by the law of Biot and Savart (for
 * straight segments and half lines as in J. Katz, A. Plotkin, Low-Speed Aerodynamics, 2nd ed. 2001,
 * section 2.11, from memory).
 *
 * <p>For each edge of the lattice in turn, short loops run over all points at once: the compiler
 * does several points at a time only in long runs through small loops without branches. One object
 * is one workspace: not for use by two threads.
 */
final class Influence {
  static final double QUARTER_OVER_PI = 0.25 / Math.PI;

  private final HalfLattice lattice;
  private final Targets targets;
  private final WakeSheet sheet;
  private final RigidInfluence rigid;

  /**
   * What an edge's wake counts at each point: 0 where it is taken as a sheet; and where a core
   * softens it.
   */
  private final double[][] wakeCounts;

  private final double[][] coreCounts;
  private int preparedBlocks;

  private Arms start;
  private Arms startBefore;
  private final Arms trail;
  private double[] leg;
  private double[] legBefore;
  private final double[] factor;
  private final double[] work;

  /**
   * The influence on points that are fixed to the wings.
   *
   * @param lattice turned to pitch 0
   * @param targets points and directions there, in deep water
   */
  Influence(HalfLattice lattice, Targets targets) {
    this.lattice = lattice;
    this.targets = targets;
    int most = targets.x.length;
    start = new Arms(most);
    startBefore = new Arms(most);
    trail = new Arms(most);
    leg = new double[most];
    legBefore = new double[most];
    factor = new double[most];
    work = new double[most];
    sheet = new WakeSheet(lattice, targets);
    rigid = new RigidInfluence(lattice, targets);
    wakeCounts = new double[lattice.surfaces.length][most];
    coreCounts = new double[lattice.surfaces.length][most];
  }

  private void prepare() {
    sheet.roll();
    if (preparedBlocks == targets.blocks()) {
      return;
    }
    preparedBlocks = targets.blocks();
    for (int from = 0; from < lattice.surfaces.length; from++) {
      for (int t = 0; t < targets.all(); t++) {
        int seen = targets.surface[t % targets.count];
        boolean asSheet = from < seen && t < Targets.REAL_BLOCKS * targets.count;
        wakeCounts[from][t] = asSheet ? 0 : 1;
        coreCounts[from][t] = from == seen ? 0 : 1;
      }
    }
  }

  /** What a half line's core measures at edge k, squared: half the spacing of the edges there. */
  private static double core(Strips s, int k) {
    double spacing = k == 0 ? s.edgeY[1] : s.edgeY[k] - s.edgeY[k - 1];
    return 0.25 * spacing * spacing;
  }

  /**
   * The velocity along each point's direction that every horseshoe of unit strength induces, all
   * blocks summed.
   *
   * @param columns one column of {@link Targets#count} per panel
   */
  void fillColumns(double[] columns) {
    prepare();
    Targets p = targets;
    int n = p.all();
    int images = Math.min(n, Targets.REAL_BLOCKS * p.count);
    for (int row = 0; row < lattice.rows; row++) {
      int from = lattice.rowSurface[row];
      Strips s = lattice.surfaces[from];
      for (int k = 0; k <= s.count; k++) {
        int e = lattice.rowEdge[row] + k;
        swap();
        approach(e, images);
        java.util.Arrays.fill(leg, 0, images, 0);
        segments(start, trail, work, factor, images, n);
        along(p, start, trail, factor, leg, images, n);
        wakes(trail, core(s, k), coreCounts[from], wakeCounts[from], factor, n);
        alongWake(p, trail, factor, leg, n);
        sheet.addAlong(from, k, leg);
        if (k > 0) {
          java.util.Arrays.fill(factor, 0, images, 0);
          segments(startBefore, start, work, factor, images, n);
          along(p, startBefore, start, factor, factor, images, n);
          addLegs(factor, leg, legBefore, n);
          int panel = lattice.rowPanel[row] + k - 1;
          sumBlocks(factor, columns, panel * p.count);
          rigid.addAlong(panel, columns);
        }
      }
    }
  }

  private void sumBlocks(double[] all, double[] columns, int to) {
    int count = targets.count;
    System.arraycopy(all, 0, columns, to, count);
    for (int b = 1; b < targets.blocks(); b++) {
      int from = b * count;
      for (int i = 0; i < count; i++) {
        columns[to + i] += all[from + i];
      }
    }
    for (int i = 0; i < count; i++) {
      columns[to + i] *= QUARTER_OVER_PI;
    }
  }

  /**
   * The velocity at every point that all horseshoes of given strengths induce, all blocks summed.
   *
   * @param strength circulation of each panel
   * @param shed net circulation that runs down each edge
   * @param vx receives the components, one per point
   * @param vy sideways
   * @param vz down
   */
  void velocities(double[] strength, double[] shed, double[] vx, double[] vy, double[] vz) {
    prepare();
    int n = targets.all();
    int images = Math.min(n, Targets.REAL_BLOCKS * targets.count);
    Arms sum = new Arms(n);
    for (int row = 0; row < lattice.rows; row++) {
      int from = lattice.rowSurface[row];
      Strips s = lattice.surfaces[from];
      for (int k = 0; k <= s.count; k++) {
        int e = lattice.rowEdge[row] + k;
        swap();
        approach(e, images);
        segments(start, trail, work, factor, images, n);
        addVelocity(start, trail, factor, shed[e], sum, images, n);
        wakes(trail, core(s, k), coreCounts[from], wakeCounts[from], factor, n);
        addWake(trail, factor, shed[e], sum, n);
        sheet.addVelocity(from, k, shed[e], sum.y, sum.z);
        if (k > 0) {
          double bound = strength[lattice.rowPanel[row] + k - 1];
          segments(startBefore, start, work, factor, images, n);
          addVelocity(startBefore, start, factor, bound, sum, images, n);
        }
      }
    }
    java.util.Arrays.fill(vx, 0);
    java.util.Arrays.fill(vy, 0);
    java.util.Arrays.fill(vz, 0);
    for (int t = 0; t < n; t++) {
      int i = t % targets.count;
      double[] sign = Targets.SIGNS[t / targets.count];
      vx[i] += QUARTER_OVER_PI * sign[0] * sum.x[t];
      vy[i] += QUARTER_OVER_PI * sign[1] * sum.y[t];
      vz[i] += QUARTER_OVER_PI * sign[2] * sum.z[t];
    }
    rigid.addVelocities(strength, lattice.pitch(), vx, vy, vz);
  }

  private void swap() {
    Arms arms = start;
    start = startBefore;
    startBefore = arms;
    double[] legs = leg;
    leg = legBefore;
    legBefore = legs;
  }

  /** Wakes act on all points, what is fixed to the wings on those above the surface only. */
  private void approach(int e, int images) {
    HalfLattice h = lattice;
    int n = targets.all();
    start.from(h.startX[e], h.startY[e], h.startZ[e], targets, images, n);
    trail.from(h.trailX[e], h.trailY[e], h.trailZ[e], targets, 0, n);
  }

  /** The factor of a x b in the velocity of a segment from a to b, at some of the points. */
  static void segments(Arms a, Arms b, double[] work, double[] out, int begin, int n) {
    dot(a.x, a.y, a.z, b.x, b.y, b.z, work, begin, n);
    segmentFactors(a.r, b.r, work, out, begin, n);
  }

  private static void dot(
      double[] ax,
      double[] ay,
      double[] az,
      double[] bx,
      double[] by,
      double[] bz,
      double[] out,
      int begin,
      int n) {
    for (int t = begin; t < n; t++) {
      out[t] = ax[t] * bx[t] + ay[t] * by[t] + az[t] * bz[t];
    }
  }

  private static void segmentFactors(
      double[] ar, double[] br, double[] dot, double[] out, int begin, int n) {
    for (int t = begin; t < n; t++) {
      double rr = ar[t] * br[t];
      out[t] = (ar[t] + br[t]) / (rr * (rr * Arms.OFF_LINE + dot[t]));
    }
  }

  /** The factor of (0, z, -y) in the velocity of a half line that runs aft. */
  private void wakes(
      Arms b, double core, double[] coreCounts, double[] counts, double[] out, int n) {
    squareAcross(b.y, b.z, core, coreCounts, work, n);
    wakeFactors(b.x, b.r, work, counts, out, n);
  }

  private static void squareAcross(
      double[] y, double[] z, double core, double[] coreCounts, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] = y[t] * y[t] + z[t] * z[t] + core * coreCounts[t];
    }
  }

  private static void wakeFactors(
      double[] x, double[] r, double[] square, double[] counts, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] = counts[t] * (r[t] - x[t]) / (r[t] * square[t]);
    }
  }

  /** The part of a x b along each point's direction, times a factor. */
  private void along(Targets p, Arms a, Arms b, double[] factor, double[] out, int begin, int n) {
    cross(p.nx, a.y, b.z, a.z, b.y, work, begin, n);
    addCross(p.ny, a.z, b.x, a.x, b.z, work, begin, n);
    addCross(p.nz, a.x, b.y, a.y, b.x, work, begin, n);
    for (int t = begin; t < n; t++) {
      out[t] = factor[t] * work[t];
    }
  }

  private static void cross(
      double[] f, double[] a, double[] b, double[] c, double[] d, double[] out, int begin, int n) {
    for (int t = begin; t < n; t++) {
      out[t] = f[t] * (a[t] * b[t] - c[t] * d[t]);
    }
  }

  private static void addCross(
      double[] f, double[] a, double[] b, double[] c, double[] d, double[] out, int begin, int n) {
    for (int t = begin; t < n; t++) {
      out[t] += f[t] * (a[t] * b[t] - c[t] * d[t]);
    }
  }

  private static void scale(double[] a, double f, int begin, int n) {
    for (int t = begin; t < n; t++) {
      a[t] *= f;
    }
  }

  private void alongWake(Targets p, Arms b, double[] factor, double[] out, int n) {
    cross(factor, p.ny, b.z, p.nz, b.y, work, 0, n);
    for (int t = 0; t < n; t++) {
      out[t] += work[t];
    }
  }

  /** A horseshoe runs out along the outer leg and back along the inner one. */
  private static void addLegs(double[] bound, double[] outer, double[] inner, int n) {
    for (int t = 0; t < n; t++) {
      bound[t] += outer[t] - inner[t];
    }
  }

  /** Adds the velocity of a segment from a to b; overwrites the factors. */
  static void addVelocity(
      Arms a, Arms b, double[] factor, double strength, Arms sum, int begin, int n) {
    scale(factor, strength, begin, n);
    addCross(factor, a.y, b.z, a.z, b.y, sum.x, begin, n);
    addCross(factor, a.z, b.x, a.x, b.z, sum.y, begin, n);
    addCross(factor, a.x, b.y, a.y, b.x, sum.z, begin, n);
  }

  private static void addWake(Arms b, double[] factor, double strength, Arms sum, int n) {
    scale(factor, strength, 0, n);
    addProduct(factor, b.z, sum.y, n);
    scale(factor, -1, 0, n);
    addProduct(factor, b.y, sum.z, n);
  }

  private static void addProduct(double[] a, double[] b, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] += a[t] * b[t];
    }
  }
}
