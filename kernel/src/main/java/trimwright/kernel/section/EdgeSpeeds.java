package trimwright.kernel.section;

/**
 * How the speed at the edge of the boundary layers and of the wake follows from the onset flow and
 * from the layers' displacement, for one angle of attack.
 *
 * <p>Stations: the outline's points in its order, the trailing edge first (above) and last (below),
 * then the wake's points behind it. Speeds count in the outline's order on the surface and
 * downstream in the wake. Displacement acts as sources: their strength is the growth of edge speed
 * times displacement thickness along each panel (Lighthill, Journal of Fluid Mechanics 4, 1958). A
 * wake's speed is the difference of potentials at the middles of neighbouring panels, which is the
 * mean over the way between them and finite where sources change. Immutable.
 */
final class EdgeSpeeds {
  /** Wake panels. */
  private static final int WAKE_PANELS = 22;

  /** Each wake panel's length over the one's before. */
  private static final double GROWTH = 1.22;

  private final SurfacePotential surface;

  /** Wake points, the trailing edge first. */
  private final double[] wakeX = new double[WAKE_PANELS + 1];

  private final double[] wakeY = new double[WAKE_PANELS + 1];
  private final double[] wakeLength = new double[WAKE_PANELS];

  /** Speeds without any displacement, one per station. */
  private final double[] onset;

  /** Speed at a station per unit source strength of a panel; surface panels, then wake panels. */
  private final double[][] bySource;

  /** Speed at a station per unit growth of the wake's jump of potential at its points. */
  private final double[][] byJump;

  /** Turn of the wake at its points, to the left going downstream [rad]. */
  private final double[] turn = new double[WAKE_PANELS];

  EdgeSpeeds(SurfacePotential surface, double[][] blown, double angle, double zeroLiftAngle) {
    this.surface = surface;
    layWake(angle, zeroLiftAngle);
    int n = surface.panels;
    onset = new double[n + 1 + wakeStations()];
    bySource = new double[onset.length][n + WAKE_PANELS];
    onsetSpeeds(angle);
    sourceSpeeds(blown);
    byJump = new double[onset.length][WAKE_PANELS];
    jumpSpeeds();
  }

  /** Stations in the wake behind the trailing edge. */
  static int wakeStations() {
    return WAKE_PANELS - 1;
  }

  /**
   * The wake leaves along the bisector of the trailing edge and turns into the stream as it would
   * below a single vortex at the quarter chord.
   */
  private void layWake(double angle, double zeroLiftAngle) {
    int n = surface.panels;
    double[] x = surface.x;
    double[] y = surface.y;
    double upX = (x[0] - x[1]) / surface.length[0];
    double upY = (y[0] - y[1]) / surface.length[0];
    double lowX = (x[n] - x[n - 1]) / surface.length[n - 1];
    double lowY = (y[n] - y[n - 1]) / surface.length[n - 1];
    double edge = Math.atan2(upY + lowY, upX + lowX);
    double step = 0.5 * (surface.length[0] + surface.length[n - 1]);
    double along = 0;
    double before = edge;
    wakeX[0] = x[0];
    wakeY[0] = y[0];
    for (int i = 0; i < WAKE_PANELS; i++) {
      double middle = along + 0.5 * step;
      double turned = angle - 0.45 * (angle - zeroLiftAngle) / (0.75 + middle);
      double share = Math.exp(-middle / 0.05);
      double slope = share * edge + (1 - share) * turned;
      wakeX[i + 1] = wakeX[i] + step * Math.cos(slope);
      wakeY[i + 1] = wakeY[i] + step * Math.sin(slope);
      wakeLength[i] = step;
      turn[i] = slope - before;
      before = slope;
      along += step;
      step *= GROWTH;
    }
  }

  private double wakeMiddleX(int i) {
    return 0.5 * (wakeX[i] + wakeX[i + 1]);
  }

  private double wakeMiddleY(int i) {
    return 0.5 * (wakeY[i] + wakeY[i + 1]);
  }

  private double wakeWay(int i) {
    return 0.5 * (wakeLength[i - 1] + wakeLength[i]);
  }

  private void onsetSpeeds(double angle) {
    int n = surface.panels;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double[] strength = new double[n];
    for (int i = 0; i < n; i++) {
      strength[i] = surface.along[i] * cos + surface.across[i] * sin;
    }
    double[] wake = new double[WAKE_PANELS];
    for (int i = 0; i < WAKE_PANELS; i++) {
      wake[i] = wakeMiddleX(i) * cos + wakeMiddleY(i) * sin + fromSurface(i, strength);
    }
    double[] speed = new double[onset.length];
    difference(strength, wake, speed);
    for (int i = 1; i < WAKE_PANELS; i++) {
      // The speed itself, not its part along the laid wake: far behind it is the stream's.
      double[] v = velocity(wakeX[i], wakeY[i], strength, cos, sin);
      double length = wakeLength[i - 1] + wakeLength[i];
      double tx = (wakeX[i + 1] - wakeX[i - 1]) / length;
      double ty = (wakeY[i + 1] - wakeY[i - 1]) / length;
      double tangential = v[0] * tx + v[1] * ty;
      speed[n + i] += Math.hypot(v[0], v[1]) - tangential;
    }
    System.arraycopy(speed, 0, onset, 0, onset.length);
  }

  /** Potential at a wake middle, mean of both sides, of doublets on the surface and behind it. */
  private double fromSurface(int i, double[] strength) {
    double px = wakeMiddleX(i);
    double py = wakeMiddleY(i);
    double sum = 0;
    for (int j = 0; j < surface.panels; j++) {
      sum -= strength[j] * surfaceAngle(j, px, py);
    }
    return SurfacePotential.PER_TURN * (sum - surface.jump(strength) * wakeAngle(px, py));
  }

  private double surfaceAngle(int j, double px, double py) {
    return PanelPotential.angle(
        surface.x[j], surface.y[j], surface.x[j + 1], surface.y[j + 1], px, py);
  }

  /** Mean over both sides of the angle between the trailing edge and the wake's far end. */
  private double wakeAngle(double px, double py) {
    return Math.atan2(py - surface.y[0], px - surface.x[0]);
  }

  /** Velocity at a point, from the vortices at the panels' ends that even doublets amount to. */
  private double[] velocity(double px, double py, double[] strength, double cos, double sin) {
    int n = surface.panels;
    double u = cos;
    double v = sin;
    for (int j = 0; j <= n; j++) {
      double vortex;
      if (j == 0) {
        // Trailing edge, both ends and the wake's jump together.
        vortex = strength[0] - strength[n - 1] - surface.jump(strength);
      } else if (j == n) {
        continue;
      } else {
        vortex = strength[j] - strength[j - 1];
      }
      double rx = px - surface.x[j];
      double ry = py - surface.y[j];
      double square = rx * rx + ry * ry;
      double k = SurfacePotential.PER_TURN * vortex / square;
      u += -k * ry;
      v += k * rx;
    }
    return new double[] {u, v};
  }

  /** Speeds from potentials on the surface's panels and at the wake's middles. */
  private void difference(double[] strength, double[] wake, double[] speed) {
    int n = surface.panels;
    for (int j = 1; j < n; j++) {
      speed[j] = (strength[j] - strength[j - 1]) / surface.way[j];
    }
    double way = edgeWay();
    double edge = (wake[0] - 0.5 * (strength[0] + strength[n - 1])) / way;
    speed[0] = -edge;
    speed[n] = edge;
    for (int i = 1; i < WAKE_PANELS; i++) {
      speed[n + i] = (wake[i] - wake[i - 1]) / wakeWay(i);
    }
  }

  private void sourceSpeeds(double[][] blown) {
    int n = surface.panels;
    int sources = n + WAKE_PANELS;
    double[][] strength = new double[n][sources];
    for (int i = 0; i < n; i++) {
      System.arraycopy(blown[i], 0, strength[i], 0, n);
    }
    double[] column = new double[n];
    for (int k = 0; k < WAKE_PANELS; k++) {
      surface.sourceColumn(wakeX[k], wakeY[k], wakeX[k + 1], wakeY[k + 1], column);
      for (int i = 0; i < n; i++) {
        strength[i][n + k] = column[i];
      }
    }
    double[][] wake = new double[WAKE_PANELS][sources];
    for (int i = 0; i < WAKE_PANELS; i++) {
      wakePotentials(i, strength, wake[i]);
    }
    for (int j = 1; j < n; j++) {
      subtract(strength[j], strength[j - 1], surface.way[j], bySource[j]);
    }
    double way = edgeWay();
    for (int k = 0; k < sources; k++) {
      double edge = (wake[0][k] - 0.5 * (strength[0][k] + strength[n - 1][k])) / way;
      bySource[0][k] = -edge;
      bySource[n][k] = edge;
    }
    for (int i = 1; i < WAKE_PANELS; i++) {
      subtract(wake[i], wake[i - 1], wakeWay(i), bySource[n + i]);
    }
  }

  private static void subtract(double[] a, double[] b, double way, double[] result) {
    for (int k = 0; k < result.length; k++) {
      result[k] = (a[k] - b[k]) / way;
    }
  }

  private void wakePotentials(int i, double[][] strength, double[] result) {
    int n = surface.panels;
    double px = wakeMiddleX(i);
    double py = wakeMiddleY(i);
    for (int k = 0; k < n; k++) {
      result[k] =
          PanelPotential.source(
              surface.x[k], surface.y[k], surface.x[k + 1], surface.y[k + 1], px, py);
    }
    for (int k = 0; k < WAKE_PANELS; k++) {
      result[n + k] = PanelPotential.source(wakeX[k], wakeY[k], wakeX[k + 1], wakeY[k + 1], px, py);
    }
    for (int j = 0; j < n; j++) {
      addScaled(-SurfacePotential.PER_TURN * surfaceAngle(j, px, py), strength[j], result);
    }
    double behind = -SurfacePotential.PER_TURN * wakeAngle(px, py);
    double[] jump = surface.jump();
    addScaled(behind * jump[0], strength[0], result);
    addScaled(behind * jump[1], strength[1], result);
    addScaled(behind * jump[2], strength[n - 2], result);
    addScaled(behind * jump[3], strength[n - 1], result);
  }

  private static void addScaled(double factor, double[] from, double[] to) {
    for (int k = 0; k < to.length; k++) {
      to[k] += factor * from[k];
    }
  }

  /** Where the wake's jump of potential grows, vortices stand: their answer on surface and wake. */
  private void jumpSpeeds() {
    int n = surface.panels;
    double[] strength = new double[n];
    double[] wake = new double[WAKE_PANELS];
    double[] speed = new double[onset.length];
    for (int k = 0; k < WAKE_PANELS; k++) {
      surface.jumpColumn(wakeX[k], wakeY[k], strength);
      for (int i = 0; i < WAKE_PANELS; i++) {
        double side = i >= k ? 1 : -1;
        double angle =
            Math.atan2(side * (wakeMiddleY(i) - wakeY[k]), side * (wakeMiddleX(i) - wakeX[k]));
        wake[i] = fromSurface(i, strength) - SurfacePotential.PER_TURN * angle;
      }
      difference(strength, wake, speed);
      if (k == 0) {
        double half = 0.5 / edgeWay();
        speed[0] -= half;
        speed[n] -= half;
      }
      for (int i = 0; i < speed.length; i++) {
        byJump[i][k] = speed[i];
      }
    }
  }

  private double edgeWay() {
    int n = surface.panels;
    return 0.5 * wakeLength[0] + 0.25 * (surface.length[0] + surface.length[n - 1]);
  }

  /** Turn of the wake at one of its points, 0 at the trailing edge, to the left [rad]. */
  double turn(int point) {
    return turn[point];
  }

  /** Points of the wake at which its jump may grow, the trailing edge first [1]. */
  static int jumps() {
    return WAKE_PANELS;
  }

  /** Change of speed at a station, in its order, by growths of the jump at the wake's points. */
  double fromJumps(int station, double[] growth) {
    double sum = 0;
    for (int k = 0; k < WAKE_PANELS; k++) {
      sum += byJump[station][k] * growth[k];
    }
    return sum;
  }

  /** Number of stations [1]. */
  int stations() {
    return onset.length;
  }

  /** Speed at a station without displacement, in the station's order. */
  double onset(int station) {
    return onset[station];
  }

  /** Length of a panel: the surface's in their order, then the wake's [chords]. */
  double panelLength(int panel) {
    int n = surface.panels;
    return panel < n ? surface.length[panel] : wakeLength[panel - n];
  }

  /**
   * Speeds per unit mass defect, both counted along the flow.
   *
   * @param stagnation panel on which the flow divides: stations up to it run against the outline's
   *     order
   * @return row per receiving station, column per station of the mass defect
   */
  double[][] byMassDefect(int stagnation) {
    int n = surface.panels;
    int size = onset.length;
    double[][] result = new double[size][size];
    for (int i = 0; i < size; i++) {
      double[] from = bySource[i];
      double[] to = result[i];
      double sign = i <= stagnation ? -1 : 1;
      for (int p = 0; p < n; p++) {
        double per = sign * from[p] / surface.length[p];
        to[p] -= per * (p <= stagnation ? -1 : 1);
        to[p + 1] += per * (p + 1 <= stagnation ? -1 : 1);
      }
      for (int k = 0; k < WAKE_PANELS; k++) {
        double per = sign * from[n + k] / wakeLength[k];
        if (k == 0) {
          to[0] -= per;
          to[n] -= per;
        } else {
          to[n + k] -= per;
        }
        if (k + 1 < WAKE_PANELS) {
          to[n + k + 1] += per;
        } else {
          // Beyond the last station the wake keeps its mass defect.
          to[n + k] += per;
        }
      }
    }
    return result;
  }
}
