package trimwright.kernel.section;

import trimwright.kernel.numeric.LinearSystem;

/**
 * Potential flow about an outline whose surface may also blow: doublets of even strength on
 * straight panels, so that the fluid inside is at rest, and sources of even strength for the
 * blowing. The strength of the doublets is then the potential of the flow outside (Morino and Kuo,
 * AIAA Journal 12, 1974, in two dimensions), and the speed at a point between two panels is the
 * difference of their strengths over the way between their middles.
 *
 * <p>Behind the trailing edge the potential jumps by its difference between the last panels above
 * and below (Kutta condition), continued to the edge itself. Nothing becomes indeterminate where
 * the surfaces nearly touch, as long as the points of both face each other. Unit chord and onset
 * speed.
 */
final class SurfacePotential {
  static final double PER_TURN = 1 / (2 * Math.PI);

  final int panels;
  final double[] x;
  final double[] y;
  final double[] middleX;
  final double[] middleY;
  final double[] length;

  /** Way along the surface between the middles on both sides of each inner point. */
  final double[] way;

  /** Potential on each panel for unit onset along the chord and across it. */
  final double[] along;

  final double[] across;

  private final LinearSystem system;
  private final double[] right;

  SurfacePotential(double[] x, double[] y) {
    this.x = x;
    this.y = y;
    panels = x.length - 1;
    middleX = new double[panels];
    middleY = new double[panels];
    length = new double[panels];
    for (int i = 0; i < panels; i++) {
      middleX[i] = 0.5 * (x[i] + x[i + 1]);
      middleY[i] = 0.5 * (y[i] + y[i + 1]);
      length[i] = Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
    }
    way = ways();
    system = LinearSystem.factor(matrix(), panels);
    right = new double[panels];
    along = new double[panels];
    across = new double[panels];
    double[] side = new double[panels];
    for (int i = 0; i < panels; i++) {
      side[i] = middleX[i];
    }
    system.solve(side, along);
    for (int i = 0; i < panels; i++) {
      side[i] = middleY[i];
    }
    system.solve(side, across);
  }

  /**
   * Betters the onset's potentials with those on panels half as long, whose points hold these: the
   * error falls about with the length, so that the difference is what is still missing.
   */
  void refine(SurfacePotential fine) {
    for (int i = 0; i < panels; i++) {
      along[i] = fine.along[2 * i] + fine.along[2 * i + 1] - along[i];
      across[i] = fine.across[2 * i] + fine.across[2 * i + 1] - across[i];
    }
  }

  /** Potential on each panel for unit source strength on each panel: row of receivers. */
  double[][] blown() {
    double[][] blown = new double[panels][panels];
    double[] answer = new double[panels];
    for (int j = 0; j < panels; j++) {
      sourceColumn(x[j], y[j], x[j + 1], y[j + 1], answer);
      for (int i = 0; i < panels; i++) {
        blown[i][j] = answer[i];
      }
    }
    return blown;
  }

  private double[] ways() {
    double[] result = new double[panels + 1];
    for (int j = 1; j < panels; j++) {
      result[j] = 0.5 * (length[j - 1] + length[j]);
    }
    return result;
  }

  private double[] matrix() {
    double[] matrix = new double[panels * panels];
    for (int i = 0; i < panels; i++) {
      double px = middleX[i];
      double py = middleY[i];
      int row = i * panels;
      for (int j = 0; j < panels; j++) {
        double angle =
            i == j ? Math.PI : PanelPotential.angle(x[j], y[j], x[j + 1], y[j + 1], px, py);
        matrix[row + j] += PER_TURN * angle;
      }
      spreadJump(matrix, row, PER_TURN * Math.atan2(y[0] - py, x[0] - px));
    }
    return matrix;
  }

  /** Adds weight times the jump behind the trailing edge to a row. */
  private void spreadJump(double[] row, int from, double weight) {
    double[] jump = jump();
    row[from] += weight * jump[0];
    row[from + 1] += weight * jump[1];
    row[from + panels - 2] += weight * jump[2];
    row[from + panels - 1] += weight * jump[3];
  }

  /**
   * The jump of potential behind the trailing edge as a sum over the first, second, last but one
   * and last panel: the difference between first and last, continued from their middles to the edge
   * with the mean speed of both sides.
   */
  double[] jump() {
    double lead = 0.25 * (length[0] - length[panels - 1]);
    double above = lead / way[1];
    double below = lead / way[panels - 1];
    return new double[] {1 + above, -above, -below, -1 + below};
  }

  /** The jump behind the trailing edge of a distribution of strengths. */
  double jump(double[] strength) {
    double[] weight = jump();
    return weight[0] * strength[0]
        + weight[1] * strength[1]
        + weight[2] * strength[panels - 2]
        + weight[3] * strength[panels - 1];
  }

  /**
   * Potential on each panel due to unit sources on a straight line, on the surface or outside.
   *
   * @param result receives one value per panel
   */
  void sourceColumn(double ax, double ay, double bx, double by, double[] result) {
    for (int i = 0; i < panels; i++) {
      right[i] = PanelPotential.source(ax, ay, bx, by, middleX[i], middleY[i]);
    }
    system.solve(right, result);
  }

  /**
   * Potential on each panel due to a jump of potential of unit size (higher above) from a point of
   * the wake on downstream.
   *
   * @param result receives one value per panel
   */
  void jumpColumn(double px, double py, double[] result) {
    for (int i = 0; i < panels; i++) {
      right[i] = -PER_TURN * Math.atan2(py - middleY[i], px - middleX[i]);
    }
    system.solve(right, result);
  }
}
