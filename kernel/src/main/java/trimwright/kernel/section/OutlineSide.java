package trimwright.kernel.section;

import trimwright.kernel.numeric.CubicSpline;

/**
 * One surface, its coordinates as functions of the square root of the straight distance from the
 * leading edge: in that variable a round nose is smooth, and it grows steadily even where a surface
 * first runs a little forward.
 */
record OutlineSide(CubicSpline alongChord, CubicSpline aboveChord) {
  /** Fine steps from edge to edge between which heights are read off [1]. */
  private static final int FINE_STEPS = 1000;

  static OutlineSide of(
      CubicSpline along, CubicSpline above, double nose, double end, String which) {
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
                + OutlinePoints.shown(behind)
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
    return new OutlineSide(CubicSpline.natural(root, x), CubicSpline.natural(root, y));
  }

  double along(double distance) {
    return alongChord.value(Math.sqrt(distance));
  }

  double above(double distance) {
    return aboveChord.value(Math.sqrt(distance));
  }
}
