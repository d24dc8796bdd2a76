package trimwright.kernel.surface;

/**
 * Velocities that the starboard horseshoe vortices induce, by the law of Biot and Savart (for
 * straight segments and half lines as in J. Katz, A. Plotkin, Low-Speed Aerodynamics, 2nd ed. 2001,
 * section 2.11, from memory). The port half and the mirror images above the free surface are had by
 * asking at mirrored points, see {@link Lattice}.
 *
 * <p>The loops have no branches and run over plain arrays so that the compiler can do several lanes
 * at once. One object is one workspace: not for use by two threads.
 */
final class Influence {
  private static final double QUARTER_OVER_PI = 0.25 / Math.PI;

  /**
   * Relative guard of the segment's denominator: on the segment's own line numerator and
   * denominator both vanish; this makes the quotient 0 there and changes nothing elsewhere (1e-9
   * relative at right angles).
   */
  private static final double LINE_GUARD = 1e-9;

  private final HalfLattice lattice;

  /**
   * Square of the core radius of each edge's wake as seen from a surface, and 0/1 whether it counts
   * as a line there.
   */
  private final double[][] wakeCore;

  private final double[][] wakeCounts;

  /** Every edge's wake counts as a line. */
  private final double[] all;

  private final double[] ax;
  private final double[] ay;
  private final double[] az;
  private final double[] ar;
  private final double[] bx;
  private final double[] by;
  private final double[] bz;
  private final double[] br;
  private final double[] leg;
  private final double[] bound;
  private final double[] ribbon;
  private final double[] ribbonY;

  Influence(HalfLattice lattice) {
    this.lattice = lattice;
    int n = lattice.edges;
    all = new double[n];
    java.util.Arrays.fill(all, 1);
    ax = new double[n];
    ay = new double[n];
    az = new double[n];
    ar = new double[n];
    bx = new double[n];
    by = new double[n];
    bz = new double[n];
    br = new double[n];
    leg = new double[n];
    bound = new double[n];
    int most = 0;
    for (Strips s : lattice.surfaces) {
      most = Math.max(most, s.count + 1);
    }
    ribbon = new double[most];
    ribbonY = new double[most];
    int surfaces = lattice.surfaces.length;
    wakeCore = new double[surfaces][n];
    wakeCounts = new double[surfaces][n];
    for (int seen = 0; seen < surfaces; seen++) {
      for (int row = 0; row < lattice.rows; row++) {
        int from = lattice.rowSurface[row];
        Strips s = lattice.surfaces[from];
        for (int k = 0; k <= s.count; k++) {
          int e = lattice.rowEdge[row] + k;
          double spacing = k == 0 ? s.edgeY[1] : s.edgeY[k] - s.edgeY[k - 1];
          wakeCore[seen][e] = from == seen ? 0 : 0.25 * spacing * spacing;
          wakeCounts[seen][e] = from < seen ? 0 : 1;
        }
      }
    }
  }

  /**
   * Adds to a row of the system what every horseshoe of unit strength induces along a direction at
   * a point.
   *
   * @param seenFrom the surface the point belongs to
   * @param sheets whether wakes of surfaces further forward are taken as sheets (near by) or as
   *     lines (far off)
   */
  void addRow(
      double px,
      double py,
      double pz,
      double nx,
      double ny,
      double nz,
      int seenFrom,
      boolean sheets,
      double[] target,
      int offset) {
    HalfLattice h = lattice;
    edgesAlong(px, py, pz, nx, ny, nz, wakeCore[seenFrom], sheets ? wakeCounts[seenFrom] : all);
    for (int row = 0; row < h.rows; row++) {
      int e0 = h.rowEdge[row];
      int count = h.surfaces[h.rowSurface[row]].count;
      boundAlong(nx, ny, nz, e0, count, target, offset + h.rowPanel[row]);
      if (sheets && h.rowSurface[row] < seenFrom) {
        if (row == h.firstRow(h.rowSurface[row])) {
          sheet(px, py, pz, row, ny != 0);
        }
        int p0 = offset + h.rowPanel[row];
        for (int k = 0; k < count; k++) {
          target[p0 + k] +=
              QUARTER_OVER_PI
                  * (nz * (ribbon[k + 1] - ribbon[k]) + ny * (ribbonY[k + 1] - ribbonY[k]));
        }
      }
    }
  }

  /**
   * What the chordwise leg and the wake of every edge induce. Several short loops instead of one
   * long one: the compiler makes use of several lanes only in loops whose body is small.
   */
  private void edgesAlong(
      double px,
      double py,
      double pz,
      double nx,
      double ny,
      double nz,
      double[] core,
      double[] counts) {
    HalfLattice h = lattice;
    int n = h.edges;
    distances(px, py, pz, h.startX, h.startY, h.startZ, ax, ay, az, ar, n);
    distances(px, py, pz, h.trailX, h.trailY, h.trailZ, bx, by, bz, br, n);
    segmentFactors(ax, ay, az, ar, 0, bx, by, bz, br, 0, leg, n);
    along(nx, ny, nz, ax, ay, az, 0, bx, by, bz, 0, leg, n);
    wakeFactors(by, bz, bx, br, core, counts, bound, n);
    for (int e = 0; e < n; e++) {
      leg[e] += bound[e] * (ny * bz[e] - nz * by[e]);
    }
  }

  private static void distances(
      double px,
      double py,
      double pz,
      double[] fromX,
      double[] fromY,
      double[] fromZ,
      double[] x,
      double[] y,
      double[] z,
      double[] r,
      int n) {
    for (int e = 0; e < n; e++) {
      double dx = px - fromX[e];
      double dy = py - fromY[e];
      double dz = pz - fromZ[e];
      x[e] = dx;
      y[e] = dy;
      z[e] = dz;
      r[e] = Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
  }

  /** Adds the parts along a direction: of the segments a x b, by their factors. */
  private static void along(
      double nx,
      double ny,
      double nz,
      double[] ax,
      double[] ay,
      double[] az,
      int a0,
      double[] bx,
      double[] by,
      double[] bz,
      int b0,
      double[] factor,
      int n) {
    for (int k = 0; k < n; k++) {
      double x = ax[a0 + k];
      double y = ay[a0 + k];
      double z = az[a0 + k];
      double x2 = bx[b0 + k];
      double y2 = by[b0 + k];
      double z2 = bz[b0 + k];
      factor[k] *= nx * (y * z2 - z * y2) + ny * (z * x2 - x * z2) + nz * (x * y2 - y * x2);
    }
  }

  private void boundAlong(
      double nx, double ny, double nz, int e0, int count, double[] target, int p0) {
    segmentFactors(ax, ay, az, ar, e0, ax, ay, az, ar, e0 + 1, bound, count);
    along(nx, ny, nz, ax, ay, az, e0, ax, ay, az, e0 + 1, bound, count);
    double[] legs = leg;
    double[] bounds = bound;
    for (int k = 0; k < count; k++) {
      target[p0 + k] += QUARTER_OVER_PI * (bounds[k] + legs[e0 + k + 1] - legs[e0 + k]);
    }
  }

  /**
   * The wake of one surface as a sheet. Lines would give a point that lies in the sheet whatever
   * the nearest line says; the sheet spreads each edge's vorticity evenly between the centres of
   * the two strips beside it, level at the height of that edge's trailing edge, and its integral is
   * closed: with u across, z above, x behind and s the distance, the integral of u/(u²+z²) (1 +
   * x/s) is ln(s - x) and that of z/(u²+z²) (1 + x/s) is atan(u/z) + atan(x u / (z s)). The root
   * edge is left out: what starboard sheds there, port takes away.
   */
  private void sheet(double px, double py, double pz, int row, boolean sideways) {
    HalfLattice h = lattice;
    Strips s = h.surfaces[h.rowSurface[row]];
    ribbon[0] = 0;
    ribbonY[0] = 0;
    for (int k = 1; k <= s.count; k++) {
      int e = h.rowEdge[row] + k;
      double from = s.centreY[k - 1];
      double to = k == s.count ? 2 * s.edgeY[k] - from : s.centreY[k];
      double z = pz - h.trailZ[e];
      double behind = h.trailX[e] - px;
      double u1 = py - from;
      double u2 = py - to;
      double s1 = Math.sqrt(behind * behind + u1 * u1 + z * z);
      double s2 = Math.sqrt(behind * behind + u2 * u2 + z * z);
      double core = 1e-6 * (to - from) * (to - from);
      ribbon[k] =
          Math.log(
                  (u2 * u2 + z * z + core)
                      * (s1 + behind)
                      / ((u1 * u1 + z * z + core) * (s2 + behind)))
              / (to - from);
      ribbonY[k] = 0;
      if (sideways && z != 0) {
        double a1 = Math.atan(u1 / z) + Math.atan(behind * u1 / (z * s1));
        double a2 = Math.atan(u2 / z) + Math.atan(behind * u2 / (z * s2));
        ribbonY[k] = (a1 - a2) / (to - from);
      }
    }
  }

  /**
   * The velocity that all starboard horseshoes of given strengths induce at a point.
   *
   * @param strength circulation per panel
   * @param shed net circulation that runs down each edge
   * @param out the three components are added here
   */
  void addVelocity(
      double px,
      double py,
      double pz,
      int seenFrom,
      boolean sheets,
      double[] strength,
      double[] shed,
      double signX,
      double signY,
      double signZ,
      double[] out) {
    HalfLattice h = lattice;
    int n = h.edges;
    distances(px, py, pz, h.startX, h.startY, h.startZ, ax, ay, az, ar, n);
    distances(px, py, pz, h.trailX, h.trailY, h.trailZ, bx, by, bz, br, n);
    segmentFactors(ax, ay, az, ar, 0, bx, by, bz, br, 0, leg, n);
    wakeFactors(by, bz, bx, br, wakeCore[seenFrom], sheets ? wakeCounts[seenFrom] : all, bound, n);
    double vx = 0;
    double vy = 0;
    double vz = 0;
    for (int e = 0; e < n; e++) {
      double c = shed[e] * leg[e];
      double w = shed[e] * bound[e];
      vx += c * (ay[e] * bz[e] - az[e] * by[e]);
      vy += c * (az[e] * bx[e] - ax[e] * bz[e]) + w * bz[e];
      vz += c * (ax[e] * by[e] - ay[e] * bx[e]) - w * by[e];
    }
    for (int row = 0; row < h.rows; row++) {
      int e0 = h.rowEdge[row];
      int p0 = h.rowPanel[row];
      int count = h.surfaces[h.rowSurface[row]].count;
      segmentFactors(ax, ay, az, ar, e0, ax, ay, az, ar, e0 + 1, bound, count);
      for (int k = 0; k < count; k++) {
        int e = e0 + k;
        double c = strength[p0 + k] * bound[k];
        vx += c * (ay[e] * az[e + 1] - az[e] * ay[e + 1]);
        vy += c * (az[e] * ax[e + 1] - ax[e] * az[e + 1]);
        vz += c * (ax[e] * ay[e + 1] - ay[e] * ax[e + 1]);
      }
      if (sheets && h.rowSurface[row] < seenFrom) {
        if (row == h.firstRow(h.rowSurface[row])) {
          sheet(px, py, pz, row, true);
        }
        for (int k = 1; k <= count; k++) {
          vy += shed[e0 + k] * ribbonY[k];
          vz += shed[e0 + k] * ribbon[k];
        }
      }
    }
    out[0] += QUARTER_OVER_PI * signX * vx;
    out[1] += QUARTER_OVER_PI * signY * vy;
    out[2] += QUARTER_OVER_PI * signZ * vz;
  }

  /** The factor of a x b in the velocity of the segments from a to b. */
  private static void segmentFactors(
      double[] ax,
      double[] ay,
      double[] az,
      double[] ar,
      int a0,
      double[] bx,
      double[] by,
      double[] bz,
      double[] br,
      int b0,
      double[] out,
      int n) {
    for (int k = 0; k < n; k++) {
      double r = ar[a0 + k];
      double r2 = br[b0 + k];
      double rr = r * r2;
      double dot = ax[a0 + k] * bx[b0 + k] + ay[a0 + k] * by[b0 + k] + az[a0 + k] * bz[b0 + k];
      out[k] = (r + r2) / (rr * (rr * (1 + LINE_GUARD) + dot));
    }
  }

  /** The factor of (0, z, -y) in the velocity of the half lines that run aft. */
  private static void wakeFactors(
      double[] by,
      double[] bz,
      double[] bx,
      double[] br,
      double[] core,
      double[] counts,
      double[] out,
      int n) {
    for (int e = 0; e < n; e++) {
      double y = by[e];
      double z = bz[e];
      double r = br[e];
      out[e] = counts[e] * (r - bx[e]) / (r * (y * y + z * z + core[e]));
    }
  }
}
