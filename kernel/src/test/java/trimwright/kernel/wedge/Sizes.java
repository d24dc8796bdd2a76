package trimwright.kernel.wedge;

/** A wedge by its sizes alone, with true circles. */
final class Sizes {
  private static final double SKIN = 2 * ShimWedge.CHORD_ERROR;

  private Sizes() {}

  static boolean inside(ShimWedge wedge, double[] at) {
    return depth(wedge, at) > 0;
  }

  static boolean nearSkin(ShimWedge wedge, double[] at) {
    return Math.abs(depth(wedge, at)) < SKIN;
  }

  /** How far inside all its bounds a place lies, below 0 outside one of them [m]. */
  private static double depth(ShimWedge wedge, double[] at) {
    double radius = wedge.cornerRadius();
    double x = Math.max(0, Math.abs(at[0]) - (wedge.length() / 2 - radius));
    double y = Math.max(0, Math.abs(at[1]) - (wedge.width() / 2 - radius));
    double outline = radius - Math.hypot(x, y);
    double hole =
        Math.hypot(Math.abs(at[0]) - wedge.boltSpacing() / 2, at[1]) - wedge.holeDiameter() / 2;
    double height = Math.min(at[2], wedge.thickness(at[0]) - at[2]);
    return Math.min(Math.min(outline, hole), height);
  }
}
