package trimwright.kernel.surface;

import java.util.Arrays;
import trimwright.kernel.numeric.LinearSystem;

/** Works out {@link LoadShifts} from a lattice that is solved and whose velocities are known. */
final class ShiftSolution {
  private ShiftSolution() {}

  /**
   * The shifts. Lift and moment go by the law of Kutta and Joukowski with the velocities of the
   * solution at hand; what a turn changes in those velocities is left out, about 1 % of the change.
   *
   * @param h lattice at its pitch
   * @param system factored
   * @param velocityX induced at the bound vortices' middles
   * @param velocityY sideways
   */
  static LoadShifts of(
      HalfLattice h,
      LinearSystem system,
      double[] velocityX,
      double[] velocityY,
      boolean deep,
      double surfaceZ) {
    int n = h.strips();
    int wings = h.surfaces.length;
    double[] lift = new double[n * n];
    double[] up = new double[wings * n];
    double[] noseUp = new double[wings * n];
    double[] right = new double[h.panels];
    double[] strength = new double[h.panels];
    int first = 0;
    for (int s = 0; s < wings; s++) {
      int count = h.surfaces[s].count;
      for (int j = 0; j < count; j++) {
        Arrays.fill(right, 0);
        for (int m = 0; m < h.surfaces[s].along; m++) {
          int panel = h.rowPanel[h.firstRow(s) + m] + j;
          // The stream crosses a panel by the sine of its angle; a turn counts as much sine.
          right[panel] = -Math.hypot(h.normalX[panel], h.normalZ[panel]);
        }
        system.solve(right, strength);
        gather(h, strength, velocityX, velocityY, first + j, lift, up, noseUp);
      }
      first += count;
    }
    return new LoadShifts(n, lift, up, noseUp, FarField.form(h, deep, surfaceZ));
  }

  private static void gather(
      HalfLattice h,
      double[] strength,
      double[] velocityX,
      double[] velocityY,
      int column,
      double[] lift,
      double[] up,
      double[] noseUp) {
    int n = h.strips();
    for (int row = 0; row < h.rows; row++) {
      int s = h.rowSurface[row];
      int firstStrip = firstStrip(h, s);
      for (int k = 0; k < h.surfaces[s].count; k++) {
        int p = h.rowPanel[row] + k;
        int e = h.rowEdge[row] + k;
        double lx = h.startX[e + 1] - h.startX[e];
        double ly = h.startY[e + 1] - h.startY[e];
        // As in Lattice: the stream is (-1, 0, 0), force / (rho/2) on two halves.
        double f = -4 * strength[p] * ((velocityX[p] - 1) * ly - velocityY[p] * lx);
        up[s * n + column] += f;
        noseUp[s * n + column] += f * h.middleX[p];
        lift[column * n + firstStrip + k] += 2 * strength[p] / h.surfaces[s].chord[k];
      }
    }
  }

  private static int firstStrip(HalfLattice h, int surface) {
    int first = 0;
    for (int s = 0; s < surface; s++) {
      first += h.surfaces[s].count;
    }
    return first;
  }
}
