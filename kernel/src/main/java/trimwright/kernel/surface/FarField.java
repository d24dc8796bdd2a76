package trimwright.kernel.surface;

/**
 * Induced drag from the kinetic energy left in the wake far behind (M. M. Munk, NACA Report 121,
 * 1921: half the density times the integral of circulation and the wash across the wake's trace,
 * from memory). A second way to the induced drag, independent of the velocities at the wing.
 */
final class FarField {
  private static final double HALF_OVER_PI = 0.5 / Math.PI;

  private FarField() {}

  /** Drag area of each surface [m²], both halves, for unit stream. */
  static double[] drag(
      HalfLattice h, double[] shed, double[] strength, boolean deep, double surfaceZ) {
    double[] drag = new double[h.surfaces.length];
    double[] all = summedOverRows(h, shed);
    for (int s = 0; s < h.surfaces.length; s++) {
      Strips strips = h.surfaces[s];
      int row = h.firstRow(s);
      for (int k = 0; k < strips.count; k++) {
        int e = h.rowEdge[row] + k;
        double dy = h.trailY[e + 1] - h.trailY[e];
        double dz = h.trailZ[e + 1] - h.trailZ[e];
        double t = (strips.centreY[k] - strips.edgeY[k]) / strips.width[k];
        double y = strips.centreY[k];
        double z = h.trailZ[e] + t * dz;
        double circulation = 0;
        for (int m = 0; m < strips.along; m++) {
          circulation += strength[h.rowPanel[row + m] + k];
        }
        // Wash along (0, dz, -dy), the upward normal times the strip's width.
        double wash = wash(h, all, y, z, dz, -dy, s, k) + wash(h, all, -y, z, -dz, -dy, s, k);
        if (!deep) {
          double mirrored = 2 * surfaceZ - z;
          wash +=
              wash(h, all, y, mirrored, -dz, -dy, s, k) + wash(h, all, -y, mirrored, dz, -dy, s, k);
        }
        drag[s] -= 2 * circulation * wash;
      }
    }
    return drag;
  }

  /**
   * All panels of a strip shed at the same trailing edge: gathered in the first row of each
   * surface.
   */
  private static double[] summedOverRows(HalfLattice h, double[] shed) {
    double[] sum = new double[h.edges];
    for (int row = 0; row < h.rows; row++) {
      int first = h.rowEdge[h.firstRow(h.rowSurface[row])];
      for (int k = 0; k <= h.surfaces[h.rowSurface[row]].count; k++) {
        sum[first + k] += shed[h.rowEdge[row] + k];
      }
    }
    return sum;
  }

  /**
   * The same as a form of the strips' lift: drag area of a surface is the sum over its strips k and
   * all strips l of cl[k] form[k][l] cl[l] [m²].
   *
   * @return for each l in turn all k, strips counted from the front surface's root
   */
  static double[] form(HalfLattice h, boolean deep, double surfaceZ) {
    int n = h.strips();
    double[] form = new double[n * n];
    int k = 0;
    for (int s = 0; s < h.surfaces.length; s++) {
      Strips seen = h.surfaces[s];
      for (int i = 0; i < seen.count; i++) {
        int e = h.rowEdge[h.firstRow(s)] + i;
        double dy = h.trailY[e + 1] - h.trailY[e];
        double dz = h.trailZ[e + 1] - h.trailZ[e];
        double t = (seen.centreY[i] - seen.edgeY[i]) / seen.width[i];
        double y = seen.centreY[i];
        double z = h.trailZ[e] + t * dz;
        double mirrored = 2 * surfaceZ - z;
        int l = 0;
        for (int from = 0; from < h.surfaces.length; from++) {
          Strips shedding = h.surfaces[from];
          for (int j = 0; j <= shedding.count; j++) {
            double wash =
                edgeWash(h, from, j, y, z, dz, -dy, s, i)
                    + edgeWash(h, from, j, -y, z, -dz, -dy, s, i);
            if (!deep) {
              wash +=
                  edgeWash(h, from, j, y, mirrored, -dz, -dy, s, i)
                      + edgeWash(h, from, j, -y, mirrored, dz, -dy, s, i);
            }
            // Circulation is lift times half the chord, in a stream of 1.
            double part = -2 * HALF_OVER_PI * 0.25 * seen.chord[i] * wash;
            if (j < shedding.count) {
              form[(l + j) * n + k] -= part * shedding.chord[j];
            }
            if (j > 0) {
              form[(l + j - 1) * n + k] += part * shedding.chord[j - 1];
            }
          }
          l += shedding.count;
        }
        k++;
      }
    }
    return form;
  }

  /** Wash of all starboard trailing vortices at a point of the far plane, along a direction. */
  private static double wash(
      HalfLattice h, double[] shed, double y, double z, double ny, double nz, int seen, int strip) {
    double wash = 0;
    for (int from = 0; from < h.surfaces.length; from++) {
      int first = h.rowEdge[h.firstRow(from)];
      for (int k = 0; k <= h.surfaces[from].count; k++) {
        wash += shed[first + k] * edgeWash(h, from, k, y, z, ny, nz, seen, strip);
      }
    }
    return HALF_OVER_PI * wash;
  }

  /** Wash of one starboard trailing vortex of strength 2 pi. */
  private static double edgeWash(
      HalfLattice h,
      int from,
      int k,
      double y,
      double z,
      double ny,
      double nz,
      int seen,
      int strip) {
    Strips s = h.surfaces[from];
    int e = h.rowEdge[h.firstRow(from)] + k;
    double u = y - h.trailY[e];
    double w = z - h.trailZ[e];
    if (from == seen || k == 0) {
      double across = u * u + w * w;
      return across > 0 ? (ny * w - nz * u) / across : 0;
    }
    // Another surface's wake may lie at the same height: taken as a sheet, see Influence.
    double begin = y - s.centreY[k - 1];
    double end = y - (k == s.count ? 2 * s.edgeY[k] - s.centreY[k - 1] : s.centreY[k]);
    double width = begin - end;
    double core = h.thin ? SheetCore.thin(width) : meeting(h, from, k, seen, strip);
    double vz = SheetCore.downwards(w, begin, end, core, h.thin) / width;
    double vy = SheetCore.sideways(w, begin, end, core, h.thin) / width;
    return ny * vy + nz * vz;
  }

  /**
   * d² of the sheet between an edge of one surface and a strip of another: where the wing behind
   * meets the wake of the one ahead, whichever of the two is asked about, so that each gives the
   * other as much as it takes.
   */
  private static double meeting(HalfLattice h, int from, int edge, int seen, int strip) {
    int other = h.rowEdge[h.firstRow(seen)] + strip;
    double distance = h.trailX[h.rowEdge[h.firstRow(from)] + edge] - h.trailX[other];
    return from < seen
        ? SheetCore.squared(SheetCore.chordAt(h.surfaces[from], edge), distance)
        : SheetCore.squared(h.surfaces[seen].chord[strip], -distance);
  }
}
