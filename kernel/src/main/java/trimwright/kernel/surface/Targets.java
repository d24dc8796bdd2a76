package trimwright.kernel.surface;

/**
 * Points at which velocities are asked for, in blocks: the points themselves, the points mirrored
 * to port, and both mirrored above the free surface. What the starboard vortices induce at a
 * mirrored point, with the signs of that block, is what the port vortices and the images induce at
 * the point itself:
 *
 * <ul>
 *   <li>port: the mirror image in the plane of symmetry, so that the sideways component changes
 *       sign;
 *   <li>images: the disturbance potential is odd about the free surface, so that the components
 *       along it change sign and the one across it does not.
 * </ul>
 */
final class Targets {
  /** Signs of the three components in each block. */
  static final double[][] SIGNS = {{1, 1, 1}, {1, -1, 1}, {-1, -1, 1}, {-1, 1, 1}};

  /** Blocks whose points lie near the surfaces themselves. */
  static final int REAL_BLOCKS = 2;

  final int count;
  final int[] surface;
  final double[] x;
  final double[] y;
  final double[] z;
  final double[] nx;
  final double[] ny;
  final double[] nz;
  private int blocks;

  Targets(int[] surface) {
    count = surface.length;
    this.surface = surface;
    x = new double[4 * count];
    y = new double[4 * count];
    z = new double[4 * count];
    nx = new double[4 * count];
    ny = new double[4 * count];
    nz = new double[4 * count];
  }

  /** Points with a direction each. */
  void set(
      double[] px,
      double[] py,
      double[] pz,
      double[] dx,
      double[] dy,
      double[] dz,
      boolean deep,
      double surfaceZ) {
    blocks = deep ? 2 : 4;
    for (int b = 0; b < blocks; b++) {
      double port = b % 2 == 0 ? 1 : -1;
      boolean image = b >= REAL_BLOCKS;
      double[] sign = SIGNS[b];
      for (int i = 0; i < count; i++) {
        int t = b * count + i;
        x[t] = px[i];
        y[t] = port * py[i];
        z[t] = image ? 2 * surfaceZ - pz[i] : pz[i];
        nx[t] = sign[0] * dx[i];
        ny[t] = sign[1] * dy[i];
        nz[t] = sign[2] * dz[i];
      }
    }
  }

  /** All points in all blocks. */
  int all() {
    return blocks * count;
  }

  int blocks() {
    return blocks;
  }
}
