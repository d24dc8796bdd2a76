package trimwright.kernel.surface;

/**
 * The starboard halves of all surfaces as horseshoe vortices, in water axes at one pitch. Plain
 * arrays, because the influence loops run over them a hundred thousand times a second.
 *
 * <p>Edges are numbered surface by surface, within a surface by panel along the chord, within that
 * from root to tip; panels likewise. Panel p of a row lies between that row's edges p and p+1
 * counted from the row's first. Each edge starts at the quarter of its panel, runs along the chord
 * line to the trailing edge and from there along the stream.
 */
final class HalfLattice {
  final Strips[] surfaces;

  /** Rows: one per surface and panel along the chord. */
  final int rows;

  final int[] rowSurface;
  final int[] rowPanel;
  final int[] rowEdge;
  final int panels;
  final int edges;

  /** Vortex start and trailing edge of each edge, water axes, z down [m]. */
  final double[] startX;

  final double[] startY;
  final double[] startZ;
  final double[] trailX;
  final double[] trailY;
  final double[] trailZ;

  /** Control point and normal of each panel. */
  final double[] controlX;

  final double[] controlY;
  final double[] controlZ;
  final double[] normalX;
  final double[] normalY;
  final double[] normalZ;

  /** Middle of each panel's bound vortex. */
  final double[] middleX;

  final double[] middleY;
  final double[] middleZ;
  final int[] panelSurface;
  final int[] panelStrip;

  /** Whether wakes are sheets without any thickness, as in a fluid without friction. */
  final boolean thin;

  private double pitch;

  HalfLattice(Strips[] surfaces, boolean thin) {
    this.surfaces = surfaces;
    this.thin = thin;
    int rowCount = 0;
    int panelCount = 0;
    int edgeCount = 0;
    for (Strips s : surfaces) {
      rowCount += s.along;
      panelCount += s.along * s.count;
      edgeCount += s.along * (s.count + 1);
    }
    rows = rowCount;
    panels = panelCount;
    edges = edgeCount;
    rowSurface = new int[rows];
    rowPanel = new int[rows];
    rowEdge = new int[rows];
    startX = new double[edges];
    startY = new double[edges];
    startZ = new double[edges];
    trailX = new double[edges];
    trailY = new double[edges];
    trailZ = new double[edges];
    controlX = new double[panels];
    controlY = new double[panels];
    controlZ = new double[panels];
    normalX = new double[panels];
    normalY = new double[panels];
    normalZ = new double[panels];
    middleX = new double[panels];
    middleY = new double[panels];
    middleZ = new double[panels];
    panelSurface = new int[panels];
    panelStrip = new int[panels];
    int row = 0;
    int panel = 0;
    int edge = 0;
    for (int s = 0; s < surfaces.length; s++) {
      for (int m = 0; m < surfaces[s].along; m++) {
        rowSurface[row] = s;
        rowPanel[row] = panel;
        rowEdge[row] = edge;
        for (int k = 0; k < surfaces[s].count; k++) {
          panelSurface[panel + k] = s;
          panelStrip[panel + k] = k;
        }
        row++;
        panel += surfaces[s].count;
        edge += surfaces[s].count + 1;
      }
    }
  }

  /** Turns everything to a pitch of the fuselage, nose up positive [rad]. */
  void turnTo(double pitch) {
    this.pitch = pitch;
    double cos = Math.cos(pitch);
    double sin = Math.sin(pitch);
    for (int row = 0; row < rows; row++) {
      Strips s = surfaces[rowSurface[row]];
      int m = row - firstRow(rowSurface[row]);
      double bound = (m + 0.25) / s.along;
      double control = (m + 0.75) / s.along;
      for (int k = 0; k <= s.count; k++) {
        int e = rowEdge[row] + k;
        double a = s.edgeAhead(k, bound);
        double b = s.edgeAbove(k, bound);
        startX[e] = a * cos - b * sin;
        startY[e] = s.edgeY[k];
        startZ[e] = -(a * sin + b * cos);
        a = s.edgeAhead(k, 1);
        b = s.edgeAbove(k, 1);
        trailX[e] = a * cos - b * sin;
        trailY[e] = s.edgeY[k];
        trailZ[e] = -(a * sin + b * cos);
      }
      for (int k = 0; k < s.count; k++) {
        int p = rowPanel[row] + k;
        int e = rowEdge[row] + k;
        double a = s.centreAhead(k, control);
        double b = s.centreAbove(k, control);
        controlX[p] = a * cos - b * sin;
        controlY[p] = s.centreY[k];
        controlZ[p] = -(a * sin + b * cos);
        double t = (s.centreY[k] - s.edgeY[k]) / s.width[k];
        middleX[p] = startX[e] + t * (startX[e + 1] - startX[e]);
        middleY[p] = s.centreY[k];
        middleZ[p] = startZ[e] + t * (startZ[e + 1] - startZ[e]);
        turnNormal(p, e, pitch + s.incidence[k] - s.zeroLiftAngle(k));
      }
    }
  }

  /** The pitch it stands at [rad]. */
  double pitch() {
    return pitch;
  }

  /** Strips of all surfaces on one half. */
  int strips() {
    int all = 0;
    for (Strips s : surfaces) {
      all += s.count;
    }
    return all;
  }

  /** First row of a surface. */
  int firstRow(int surface) {
    int row = 0;
    for (int s = 0; s < surface; s++) {
      row += surfaces[s].along;
    }
    return row;
  }

  /** The flow must not cross the line of no lift, which stands at an angle to the stream. */
  private void turnNormal(int p, int e, double angle) {
    double ct = Math.cos(angle);
    double st = Math.sin(angle);
    double sx = startX[e + 1] - startX[e];
    double sy = startY[e + 1] - startY[e];
    double sz = startZ[e + 1] - startZ[e];
    // Span direction times the direction of no lift (ct, 0, -st) gives the normal that points up.
    double nx = -sy * st;
    double ny = sz * ct + sx * st;
    double nz = -sy * ct;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    normalX[p] = nx / length;
    normalY[p] = ny / length;
    normalZ[p] = nz / length;
  }
}
