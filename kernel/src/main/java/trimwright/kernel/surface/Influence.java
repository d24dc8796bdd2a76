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

  private final double[] ax;
  private final double[] ay;
  private final double[] az;
  private final double[] ar;
  private final double[] leg;
  private final double[] legY;
  private final double[] legZ;
  private final double[] ribbon;
  private final double[] ribbonY;

  Influence(HalfLattice lattice) {
    this.lattice = lattice;
    int n = lattice.edges;
    ax = new double[n];
    ay = new double[n];
    az = new double[n];
    ar = new double[n];
    leg = new double[n];
    legY = new double[n];
    legZ = new double[n];
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
    edgesAlong(px, py, pz, nx, ny, nz, wakeCore[seenFrom], sheets ? wakeCounts[seenFrom] : null);
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
    double[] ex = h.startX;
    double[] ey = h.startY;
    double[] ez = h.startZ;
    double[] tx = h.trailX;
    double[] ty = h.trailY;
    double[] tz = h.trailZ;
    double[] vax = ax;
    double[] vay = ay;
    double[] vaz = az;
    double[] var = ar;
    double[] out = leg;
    for (int e = 0; e < n; e++) {
      double x = px - ex[e];
      double y = py - ey[e];
      double z = pz - ez[e];
      double r = Math.sqrt(x * x + y * y + z * z);
      vax[e] = x;
      vay[e] = y;
      vaz[e] = z;
      var[e] = r;
      double bx = px - tx[e];
      double by = py - ty[e];
      double bz = pz - tz[e];
      double across = by * by + bz * bz;
      double rb = Math.sqrt(bx * bx + across);
      double rr = r * rb;
      double chordwise =
          (nx * (y * bz - z * by) + ny * (z * bx - x * bz) + nz * (x * by - y * bx)) * (r + rb);
      double under = rr * (rr * (1 + LINE_GUARD) + (x * bx + y * by + z * bz));
      double wake = (ny * bz - nz * by) * (rb - bx);
      double wakeUnder = rb * (across + core[e]);
      // One division for both pieces.
      double w = counts == null ? 1 : counts[e];
      out[e] = (chordwise * wakeUnder + w * wake * under) / (under * wakeUnder);
    }
  }

  private void boundAlong(
      double nx, double ny, double nz, int e0, int count, double[] target, int p0) {
    double[] vax = ax;
    double[] vay = ay;
    double[] vaz = az;
    double[] var = ar;
    double[] legs = leg;
    for (int k = 0; k < count; k++) {
      int e = e0 + k;
      double x = vax[e];
      double y = vay[e];
      double z = vaz[e];
      double x2 = vax[e + 1];
      double y2 = vay[e + 1];
      double z2 = vaz[e + 1];
      double r = var[e];
      double r2 = var[e + 1];
      double rr = r * r2;
      double up =
          (nx * (y * z2 - z * y2) + ny * (z * x2 - x * z2) + nz * (x * y2 - y * x2)) * (r + r2);
      double under = rr * (rr * (1 + LINE_GUARD) + (x * x2 + y * y2 + z * z2));
      target[p0 + k] += QUARTER_OVER_PI * (up / under + legs[e + 1] - legs[e]);
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
    double[] counts = wakeCounts[seenFrom];
    double[] core = wakeCore[seenFrom];
    double vx = 0;
    double vy = 0;
    double vz = 0;
    for (int e = 0; e < h.edges; e++) {
      double x = px - h.startX[e];
      double y = py - h.startY[e];
      double z = pz - h.startZ[e];
      double r = Math.sqrt(x * x + y * y + z * z);
      ax[e] = x;
      ay[e] = y;
      az[e] = z;
      ar[e] = r;
      double bx = px - h.trailX[e];
      double by = py - h.trailY[e];
      double bz = pz - h.trailZ[e];
      double across = by * by + bz * bz;
      double rb = Math.sqrt(bx * bx + across);
      double rr = r * rb;
      double c = shed[e] * (r + rb) / (rr * (rr * (1 + LINE_GUARD) + (x * bx + y * by + z * bz)));
      double w = shed[e] * (rb - bx) / (rb * (across + core[e]));
      if (sheets) {
        w *= counts[e];
      }
      vx += c * (y * bz - z * by);
      vy += c * (z * bx - x * bz) + w * bz;
      vz += c * (x * by - y * bx) - w * by;
    }
    for (int row = 0; row < h.rows; row++) {
      int e0 = h.rowEdge[row];
      int p0 = h.rowPanel[row];
      int count = h.surfaces[h.rowSurface[row]].count;
      for (int k = 0; k < count; k++) {
        int e = e0 + k;
        double x = ax[e];
        double y = ay[e];
        double z = az[e];
        double x2 = ax[e + 1];
        double y2 = ay[e + 1];
        double z2 = az[e + 1];
        double rr = ar[e] * ar[e + 1];
        double c =
            strength[p0 + k]
                * (ar[e] + ar[e + 1])
                / (rr * (rr * (1 + LINE_GUARD) + (x * x2 + y * y2 + z * z2)));
        vx += c * (y * z2 - z * y2);
        vy += c * (z * x2 - x * z2);
        vz += c * (x * y2 - y * x2);
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
}
