package trimwright.kernel.surface;

import trimwright.kernel.numeric.Arctangent;

/**
 * How thick the sheet of trailing vorticity is where a wing behind meets it. The vorticity leaves
 * with the boundary layers and lies in the viscous wake; an eddy viscosity spreads the water's
 * sideways shear as it spreads its lost speed, so that both have one profile, cos²(pi z / 2 b) over
 * the half width b that {@link WingWake} has from NACA Report 651.
 *
 * <p>A core d in L. Rosenhead's form, z² + d² in place of z² in the law of Biot and Savart
 * (Proceedings of the Royal Society A 127, 1930, from memory), keeps the integrals closed, but
 * takes d²/2z² of the flow away outside. Twice the flow with d² less once that with 2 d² takes away
 * nothing of that order: the whole circulation is left, 3/4 (d/z)⁴ is what is missing. Its shear in
 * the middle is that of the viscous profile for d = (1 - 1/√8) b.
 *
 * <p>The thickness is that of the place where the sheet is met, growing as the root of the
 * distance; the lattice knows no Reynolds number, so that one drag coefficient stands for all. A
 * clean section's 0.006 makes the sheet 23 % thinner, 0.015 makes it 22 % thicker. Without friction
 * the sheet has no thickness; then only a point on a seam to a thousandth of its width feels a
 * core.
 */
final class SheetCore {
  /** Profile drag of usual sections at Reynolds numbers of 3e5 to 2e6 [1]. Chosen. */
  private static final double DRAG = 0.01;

  /** d over b: 2/d - 1/(√2 d) is the slope 2/b of the profile's integral in the middle. */
  static final double CORE_OVER_HALF_WIDTH = 1 - 1 / Math.sqrt(8);

  /** Core of a sheet without thickness over the seams' distance, squared [1]. */
  private static final double SEAM = 1e-6;

  private SheetCore() {}

  /**
   * d² of the sheet.
   *
   * @param chord of the wing that sheds it [m]
   * @param distance behind the trailing edge [m]; ahead of it counts as at it
   * @return [m²]
   */
  static double squared(double chord, double distance) {
    double core = CORE_OVER_HALF_WIDTH * chord;
    core *= WingWake.halfWidth(Math.max(0, distance) / chord, DRAG);
    return core * core;
  }

  /** d² of a sheet without thickness between two seams so far apart [m²]. */
  static double thin(double width) {
    return SEAM * width * width;
  }

  /** Chord of a wing at an edge: the mean of the strips beside it [m]. */
  static double chordAt(Strips s, int edge) {
    return 0.5 * (s.chord[Math.max(0, edge - 1)] + s.chord[Math.min(s.count - 1, edge)]);
  }

  /**
   * Sideways flow of a unit of vorticity of either sense far behind, spread level between two seams
   * and up and down.
   *
   * @param z of the point below the sheet [m]
   * @param begin of the point past the first seam [m]
   * @param end past the second [m]
   * @param core d² [m²]
   * @param thin whether the sheet has no thickness
   */
  static double sideways(double z, double begin, double end, double core, boolean thin) {
    double once = sideways(z, begin, end, core);
    return thin ? once : 2 * once - sideways(z, begin, end, 2 * core);
  }

  private static double sideways(double z, double begin, double end, double core) {
    double square = z * z + core;
    double height = Math.sqrt(square);
    return z / height * Arctangent.of(height * (begin - end), square + begin * end);
  }

  /** The same, downwards. */
  static double downwards(double z, double begin, double end, double core, boolean thin) {
    double square = z * z + core;
    double once = (end * end + square) / (begin * begin + square);
    if (thin) {
      return 0.5 * Math.log(once);
    }
    double wider = square + core;
    return 0.5 * Math.log(once * once * (begin * begin + wider) / (end * end + wider));
  }
}
