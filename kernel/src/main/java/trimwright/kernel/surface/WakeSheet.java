package trimwright.kernel.surface;

import trimwright.kernel.numeric.Arctangent;

/**
 * The wake of a surface as the surfaces behind it meet it. Lines would give a point that lies in
 * the wake whatever the nearest line says; the sheet spreads each edge's vorticity evenly between
 * the centres of the two strips beside it, level at the height of that edge's trailing edge, and up
 * and down as {@link SheetCore} says. Without that thickness the wash grows with the logarithm of
 * the distance to the seam of two strips' wakes that leave at different heights, and the foot
 * pressure has spikes of up to 30 mm over a fifth of a degree of pitch, as no water has.
 *
 * <p>Its integral is closed for each core: with u across, z above, x behind, d the core, h² = z² +
 * d², r² = h² + x² and s² = u² + r², the integral of u/(u²+h²) (1 + x/s) over u is ln(s - x), and
 * that of z/(u²+h²) (1 + x/s) is (z/h) (atan(u/h) + atan(x u / (h s))), which is (2 z/h) atan(u (r
 * + x) / (h (r + s))) (elementary; derived here, and held against quadrature by a test). The root
 * edge is left out: what starboard sheds there, port takes away. The images of the sheets lie far
 * from all wings and stay lines, see {@link Influence}.
 */
final class WakeSheet {
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
        double chord = SheetCore.chordAt(s, k);
        for (int i = 0; i < aft[from].length; i++) {
          ribbon(from, k, i, first + k, chord, inner, outer);
        }
      }
    }
  }

  private void ribbon(int from, int k, int i, int e, double chord, double inner, double outer) {
    int t = aft[from][i];
    double width = outer - inner;
    double z = targets.z[t] - lattice.trailZ[e];
    double behind = lattice.trailX[e] - targets.x[t];
    double u1 = targets.y[t] - inner;
    double u2 = targets.y[t] - outer;
    double core = lattice.thin ? SheetCore.thin(width) : SheetCore.squared(chord, behind);
    double square = z * z + core;
    double ratio = ratio(u1, u2, square, behind);
    double turn = turn(u1, u2, square, behind);
    if (lattice.thin) {
      down[from][k][i] = Math.log(ratio) / width;
      across[from][k][i] = z * turn / width;
      return;
    }
    double wider = square + core;
    down[from][k][i] = Math.log(ratio * ratio / ratio(u1, u2, wider, behind)) / width;
    across[from][k][i] = z * (2 * turn - turn(u1, u2, wider, behind)) / width;
  }

  /** (s - x) at the first seam over that at the second. */
  private static double ratio(double u1, double u2, double square, double behind) {
    double flat = behind * behind + square;
    double s1 = Math.sqrt(flat + u1 * u1);
    double s2 = Math.sqrt(flat + u2 * u2);
    // s - x as (u² + h²) / (s + x), which does not cancel far behind.
    return (u2 * u2 + square) * (s1 + behind) / ((u1 * u1 + square) * (s2 + behind));
  }

  /** The two arctangents between the seams, over h: the angle between two directions. */
  private static double turn(double u1, double u2, double square, double behind) {
    double flat = behind * behind + square;
    double s1 = Math.sqrt(flat + u1 * u1);
    double s2 = Math.sqrt(flat + u2 * u2);
    double h = Math.sqrt(square);
    double r = Math.sqrt(flat);
    double along = r + behind;
    double y1 = u1 * along;
    double y2 = u2 * along;
    double x1 = h * (r + s1);
    double x2 = h * (r + s2);
    return 2 * Arctangent.of(y1 * x2 - y2 * x1, x1 * x2 + y1 * y2) / h;
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
