package trimwright.kernel.surface;

import trimwright.kernel.numeric.Arctangent;

/**
 * The wake of a surface as the surfaces behind it meet it. Lines would give a point that lies in
 * the wake whatever the nearest line says; the sheet spreads each edge's vorticity evenly between
 * the centres of the two strips beside it, level at the height of that edge's trailing edge.
 *
 * <p>Its integral is closed: with u across, z above, x behind and s the distance, the integral of
 * u/(u²+z²) (1 + x/s) over u is ln(s - x), and that of z/(u²+z²) (1 + x/s) is atan(u/z) + atan(x u
 * / (z s)) (elementary; derived here, and held against quadrature by a test). The root edge is left
 * out: what starboard sheds there, port takes away.
 */
final class WakeSheet {
  /**
   * Core of the sheet's seams over the seams' distance, squared: only a point on a seam to a
   * thousandth feels it.
   */
  private static final double SEAM = 1e-6;

  private final HalfLattice lattice;
  private final Targets targets;

  /** Per surface, edge and point among the real blocks: the sideways and the downward part. */
  private final double[][][] across;

  private final double[][][] down;

  /** Points of surfaces further aft than each surface, as indices into the real blocks. */
  private final int[][] aft;

  WakeSheet(HalfLattice lattice, Targets targets) {
    this.lattice = lattice;
    this.targets = targets;
    int surfaces = lattice.surfaces.length;
    across = new double[surfaces][][];
    down = new double[surfaces][][];
    aft = new int[surfaces][];
    for (int from = 0; from < surfaces; from++) {
      int source = from;
      aft[from] =
          java.util.stream.IntStream.range(0, Targets.REAL_BLOCKS * targets.count)
              .filter(t -> targets.surface[t % targets.count] > source)
              .toArray();
      int edges = lattice.surfaces[from].count + 1;
      across[from] = new double[edges][aft[from].length];
      down[from] = new double[edges][aft[from].length];
    }
  }

  /** Works the sheets out for where lattice and points now are. */
  void roll() {
    for (int from = 0; from < aft.length; from++) {
      if (aft[from].length == 0) {
        continue;
      }
      Strips s = lattice.surfaces[from];
      int first = lattice.rowEdge[lattice.firstRow(from)];
      for (int k = 1; k <= s.count; k++) {
        double inner = s.centreY[k - 1];
        double outer = k == s.count ? 2 * s.edgeY[k] - inner : s.centreY[k];
        for (int i = 0; i < aft[from].length; i++) {
          ribbon(from, k, i, first + k, inner, outer);
        }
      }
    }
  }

  private void ribbon(int from, int k, int i, int e, double inner, double outer) {
    int t = aft[from][i];
    double width = outer - inner;
    double z = targets.z[t] - lattice.trailZ[e];
    double behind = lattice.trailX[e] - targets.x[t];
    double u1 = targets.y[t] - inner;
    double u2 = targets.y[t] - outer;
    double flat = behind * behind + z * z;
    double s1 = Math.sqrt(flat + u1 * u1);
    double s2 = Math.sqrt(flat + u2 * u2);
    double core = SEAM * width * width;
    // ln(s - x) as ln((u² + z²) / (s + x)), which does not cancel far behind.
    double most = (u2 * u2 + z * z + core) * (s1 + behind + core);
    double least = (u1 * u1 + z * z + core) * (s2 + behind + core);
    down[from][k][i] = Math.log(most / least) / width;
    double a = 0;
    if (z != 0) {
      // atan(u/z) and atan(x u / (z s)), each between the sheet's two seams: as angles between two
      // directions, which stay within half a turn.
      a =
          Arctangent.of(z * width, z * z + u1 * u2)
              + Arctangent.of(
                  behind * z * (u1 * s2 - u2 * s1), z * z * s1 * s2 + behind * behind * u1 * u2);
    }
    across[from][k][i] = a / width;
  }

  /** Adds what a unit of vorticity shed at an edge induces along each point's direction. */
  void addAlong(int from, int k, double[] out) {
    int[] points = aft[from];
    for (int i = 0; i < points.length; i++) {
      int t = points[i];
      out[t] += targets.nz[t] * down[from][k][i] + targets.ny[t] * across[from][k][i];
    }
  }

  /** Adds the velocity that vorticity of a strength shed at an edge induces. */
  void addVelocity(int from, int k, double strength, double[] vy, double[] vz) {
    int[] points = aft[from];
    for (int i = 0; i < points.length; i++) {
      int t = points[i];
      vy[t] += strength * across[from][k][i];
      vz[t] += strength * down[from][k][i];
    }
  }
}
