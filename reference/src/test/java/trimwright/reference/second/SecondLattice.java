package trimwright.reference.second;

/**
 * A vortex lattice for flat wings of straight taper and sweep in the limit of small angles: all
 * vortices lie in one plane, wakes included (J. Katz, A. Plotkin, Low-Speed Aerodynamics, chapter
 * 12, from memory).
 *
 * @param liftSlope [1/rad]
 * @param extraDrag induced drag of the far wake over that of the ellipse, less 1 [1]
 */
record SecondLattice(double liftSlope, double extraDrag) {

  /**
   * A wing.
   *
   * @param aspectRatio [1]
   * @param taper tip chord over root chord [1]
   * @param sweep of the quarter line, backward positive [rad]
   * @param strips on each half
   * @param panels along the chord
   * @param equalWidths whether strips are equally wide, else narrowing towards the tip
   */
  static SecondLattice of(
      double aspectRatio, double taper, double sweep, int strips, int panels, boolean equalWidths) {
    double half = aspectRatio * (1 + taper) / 4;
    double[] edge = new double[strips + 1];
    double[] centre = new double[strips];
    for (int k = 0; k <= strips; k++) {
      edge[k] = half * place((double) k / strips, equalWidths);
    }
    for (int k = 0; k < strips; k++) {
      centre[k] = half * place((k + 0.5) / strips, equalWidths);
    }
    double slant = Math.tan(sweep);
    int n = strips * panels;
    double[][] a = new double[n][n];
    double[] b = new double[n];
    for (int i = 0; i < n; i++) {
      double y = centre[i % strips];
      double x = y * slant + ((i / strips + 0.75) / panels - 0.25) * chord(y, half, taper);
      for (int j = 0; j < n; j++) {
        int k = j % strips;
        double share = (j / strips + 0.25) / panels - 0.25;
        double x1 = edge[k] * slant + share * chord(edge[k], half, taper);
        double x2 = edge[k + 1] * slant + share * chord(edge[k + 1], half, taper);
        a[i][j] =
            downwash(x, y, x1, edge[k], x2, edge[k + 1])
                + downwash(x, -y, x1, edge[k], x2, edge[k + 1]);
      }
      b[i] = 1;
    }
    double[] strength = Gauss.solve(a, b);
    double[] circulation = new double[strips];
    for (int j = 0; j < n; j++) {
      circulation[j % strips] += strength[j];
    }
    double area = half * (1 + taper);
    double lift = 0;
    double drag = 0;
    for (int k = 0; k < strips; k++) {
      double width = edge[k + 1] - edge[k];
      lift += 4 * circulation[k] * width / area;
      double wash = 0;
      for (int e = 1; e <= strips; e++) {
        double shed = circulation[e - 1] - (e == strips ? 0 : circulation[e]);
        wash += shed / (2 * Math.PI) * (1 / (edge[e] - centre[k]) + 1 / (edge[e] + centre[k]));
      }
      drag += 2 * circulation[k] * wash * width / area;
    }
    return new SecondLattice(lift, drag * Math.PI * aspectRatio / (lift * lift) - 1);
  }

  private static double place(double share, boolean equalWidths) {
    return equalWidths ? share : Math.sin(0.5 * Math.PI * share);
  }

  private static double chord(double y, double half, double taper) {
    return 1 - (1 - taper) * y / half;
  }

  /** Downwash of a unit horseshoe, x backward, in its own plane. */
  private static double downwash(double x, double y, double x1, double y1, double x2, double y2) {
    double dx1 = x - x1;
    double dy1 = y - y1;
    double dx2 = x - x2;
    double dy2 = y - y2;
    double r1 = Math.hypot(dx1, dy1);
    double r2 = Math.hypot(dx2, dy2);
    double across = dx1 * dy2 - dx2 * dy1;
    double along1 = ((x2 - x1) * dx1 + (y2 - y1) * dy1) / r1;
    double along2 = ((x2 - x1) * dx2 + (y2 - y1) * dy2) / r2;
    double bound = (along1 - along2) / across;
    double legs = (1 + dx2 / r2) / dy2 - (1 + dx1 / r1) / dy1;
    return -(bound + legs) / (4 * Math.PI);
  }
}
