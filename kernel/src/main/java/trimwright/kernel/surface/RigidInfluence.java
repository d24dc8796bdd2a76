package trimwright.kernel.surface;

/**
 * The part of a lattice's own influence that turns with it: bound vortices and their legs along the
 * chord, of both halves, on points that are fixed to the wings. In axes fixed to the wings it is
 * the same at every pitch, so that it is worked out once; what follows the stream or the free
 * surface, wakes and images, is {@link Influence}'s. Immutable.
 */
final class RigidInfluence {
  /** Cosine beyond which a point counts as between a vortex' ends, on its line: 1e-6 rad. */
  private static final double ON_LINE = 1 - 5e-13;

  private final int count;
  private final int panels;

  /** Velocity at each point of a panel's unit strength at pitch 0, panel after panel. */
  private final double[] x;

  private final double[] y;
  private final double[] z;

  /** The same along the points' directions, which turn too. */
  private final double[] along;

  /**
   * Works it out.
   *
   * @param lattice turned to pitch 0
   * @param targets points and directions there, in deep water
   */
  RigidInfluence(HalfLattice lattice, Targets targets) {
    count = targets.count;
    panels = lattice.panels;
    x = new double[panels * count];
    y = new double[panels * count];
    z = new double[panels * count];
    along = new double[panels * count];
    int n = targets.all();
    Arms start = new Arms(n);
    Arms before = new Arms(n);
    Arms trail = new Arms(n);
    Arms leg = new Arms(n);
    Arms legBefore = new Arms(n);
    Arms shoe = new Arms(n);
    double[] factor = new double[n];
    double[] work = new double[n];
    for (int row = 0; row < lattice.rows; row++) {
      for (int k = 0; k <= lattice.surfaces[lattice.rowSurface[row]].count; k++) {
        int e = lattice.rowEdge[row] + k;
        start.from(lattice.startX[e], lattice.startY[e], lattice.startZ[e], targets, 0, n);
        trail.from(lattice.trailX[e], lattice.trailY[e], lattice.trailZ[e], targets, 0, n);
        Influence.segments(start, trail, work, factor, 0, n);
        leg.clear();
        Influence.addVelocity(start, trail, factor, 1, leg, 0, n);
        if (k > 0) {
          Influence.segments(before, start, work, factor, 0, n);
          leaveOutOnLine(before, start, work, factor, n);
          shoe.clear();
          Influence.addVelocity(before, start, factor, 1, shoe, 0, n);
          shoe.add(leg, 1);
          shoe.add(legBefore, -1);
          fold(shoe, targets, (lattice.rowPanel[row] + k - 1) * count);
        }
        Arms arms = start;
        start = before;
        before = arms;
        arms = leg;
        leg = legBefore;
        legBefore = arms;
      }
    }
  }

  /** A vortex induces nothing on its own line; what is computed there is rounding, magnified. */
  private static void leaveOutOnLine(Arms a, Arms b, double[] dot, double[] factor, int n) {
    for (int t = 0; t < n; t++) {
      if (dot[t] < -ON_LINE * a.r[t] * b.r[t]) {
        factor[t] = 0;
      }
    }
  }

  /** Both halves together. */
  private void fold(Arms shoe, Targets p, int to) {
    double unit = Influence.QUARTER_OVER_PI;
    for (int i = 0; i < count; i++) {
      int port = count + i;
      x[to + i] = unit * (shoe.x[i] + shoe.x[port]);
      y[to + i] = unit * (shoe.y[i] - shoe.y[port]);
      z[to + i] = unit * (shoe.z[i] + shoe.z[port]);
      along[to + i] = p.nx[i] * x[to + i] + p.ny[i] * y[to + i] + p.nz[i] * z[to + i];
    }
  }

  /** Adds a panel's part along the points' directions to a column. */
  void addAlong(int panel, double[] columns) {
    Columns.add(1, along, panel * count, columns, panel * count, count);
  }

  /** Adds the velocities of given strengths at a pitch. */
  void addVelocities(double[] strength, double pitch, double[] vx, double[] vy, double[] vz) {
    double[] ahead = new double[count];
    double[] below = new double[count];
    for (int p = 0; p < panels; p++) {
      Columns.add(strength[p], x, p * count, ahead, 0, count);
      Columns.add(strength[p], y, p * count, vy, 0, count);
      Columns.add(strength[p], z, p * count, below, 0, count);
    }
    double cos = Math.cos(pitch);
    double sin = Math.sin(pitch);
    // Nose up turns what points ahead upwards, which is against z.
    for (int i = 0; i < count; i++) {
      vx[i] += ahead[i] * cos + below[i] * sin;
      vz[i] += below[i] * cos - ahead[i] * sin;
    }
  }
}
