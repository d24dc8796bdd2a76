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
  private static final double QUARTER_OVER_PI = 0.25 / Math.PI;

  private final HalfLattice lattice;
  private final Targets targets;
  private final WakeSheet sheet;

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
    for (int row = 0; row < lattice.rows; row++) {
      int from = lattice.rowSurface[row];
      Strips s = lattice.surfaces[from];
      for (int k = 0; k <= s.count; k++) {
        int e = lattice.rowEdge[row] + k;
        swap();
        approach(e);
        segments(start, trail, factor, n);
        along(p, start, trail, factor, leg, n);
        wakes(trail, core(s, k), coreCounts[from], wakeCounts[from], factor, n);
        alongWake(p, trail, factor, leg, n);
        sheet.addAlong(from, k, leg);
        if (k > 0) {
          segments(startBefore, start, factor, n);
          bound(p, startBefore, start, factor, leg, legBefore, n);
          sumBlocks(factor, columns, (lattice.rowPanel[row] + k - 1) * p.count);
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
    Arms sum = new Arms(n);
    for (int row = 0; row < lattice.rows; row++) {
      int from = lattice.rowSurface[row];
      Strips s = lattice.surfaces[from];
      for (int k = 0; k <= s.count; k++) {
        int e = lattice.rowEdge[row] + k;
        swap();
        approach(e);
        segments(start, trail, factor, n);
        addVelocity(start, trail, factor, shed[e], sum, n);
        wakes(trail, core(s, k), coreCounts[from], wakeCounts[from], factor, n);
        addWake(trail, factor, shed[e], sum, n);
        sheet.addVelocity(from, k, shed[e], sum.y, sum.z);
        if (k > 0) {
          segments(startBefore, start, factor, n);
          addVelocity(startBefore, start, factor, strength[lattice.rowPanel[row] + k - 1], sum, n);
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
  }

  private void swap() {
    Arms arms = start;
    start = startBefore;
    startBefore = arms;
    double[] legs = leg;
    leg = legBefore;
    legBefore = legs;
  }

  private void approach(int e) {
    HalfLattice h = lattice;
    int n = targets.all();
    start.from(h.startX[e], h.startY[e], h.startZ[e], targets, n);
    trail.from(h.trailX[e], h.trailY[e], h.trailZ[e], targets, n);
  }

  /** The factor of a x b in the velocity of a segment from a to b. */
  private void segments(Arms a, Arms b, double[] out, int n) {
    dot(a.x, a.y, a.z, b.x, b.y, b.z, work, n);
    segmentFactors(a.r, b.r, work, out, n);
  }

  private static void dot(
      double[] ax,
      double[] ay,
      double[] az,
      double[] bx,
      double[] by,
      double[] bz,
      double[] out,
      int n) {
    for (int t = 0; t < n; t++) {
      out[t] = ax[t] * bx[t] + ay[t] * by[t] + az[t] * bz[t];
    }
  }

  private static void segmentFactors(double[] ar, double[] br, double[] dot, double[] out, int n) {
    for (int t = 0; t < n; t++) {
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
  private void along(Targets p, Arms a, Arms b, double[] factor, double[] out, int n) {
    cross(p.nx, a.y, b.z, a.z, b.y, work, n);
    addCross(p.ny, a.z, b.x, a.x, b.z, work, n);
    addCross(p.nz, a.x, b.y, a.y, b.x, work, n);
    multiply(factor, work, out, n);
  }

  private static void cross(
      double[] f, double[] a, double[] b, double[] c, double[] d, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] = f[t] * (a[t] * b[t] - c[t] * d[t]);
    }
  }

  private static void addCross(
      double[] f, double[] a, double[] b, double[] c, double[] d, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] += f[t] * (a[t] * b[t] - c[t] * d[t]);
    }
  }

  private static void multiply(double[] a, double[] b, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] = a[t] * b[t];
    }
  }

  private static void scale(double[] a, double f, int n) {
    for (int t = 0; t < n; t++) {
      a[t] *= f;
    }
  }

  private void alongWake(Targets p, Arms b, double[] factor, double[] out, int n) {
    cross(factor, p.ny, b.z, p.nz, b.y, work, n);
    for (int t = 0; t < n; t++) {
      out[t] += work[t];
    }
  }

  /**
   * A horseshoe: its bound part, out along the outer leg, back along the inner one. Overwrites the
   * factors.
   */
  private void bound(
      Targets p, Arms a, Arms b, double[] factor, double[] outer, double[] inner, int n) {
    along(p, a, b, factor, factor, n);
    for (int t = 0; t < n; t++) {
      factor[t] += outer[t] - inner[t];
    }
  }

  private static void addVelocity(
      Arms a, Arms b, double[] factor, double strength, Arms sum, int n) {
    scale(factor, strength, n);
    addCross(factor, a.y, b.z, a.z, b.y, sum.x, n);
    addCross(factor, a.z, b.x, a.x, b.z, sum.y, n);
    addCross(factor, a.x, b.y, a.y, b.x, sum.z, n);
  }

  private static void addWake(Arms b, double[] factor, double strength, Arms sum, int n) {
    scale(factor, strength, n);
    addProduct(factor, b.z, sum.y, n);
    scale(factor, -1, n);
    addProduct(factor, b.y, sum.z, n);
  }

  private static void addProduct(double[] a, double[] b, double[] out, int n) {
    for (int t = 0; t < n; t++) {
      out[t] += a[t] * b[t];
    }
  }
}
