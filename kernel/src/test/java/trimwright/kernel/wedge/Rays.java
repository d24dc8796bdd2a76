package trimwright.kernel.wedge;

/** Tells inside from outside by counting where a ray leaves and enters. */
final class Rays {
  /** Along no edge of any wedge. */
  private static final double[] RAY = {0.5377, 0.2143, 0.8155};

  private Rays() {}

  static boolean inside(Solid solid, double[] from) {
    int balance = 0;
    for (int i = 0; i < solid.triangleCount(); i++) {
      int[] t = solid.triangle(i);
      double[] a = minus(solid.corner(t[0]), from);
      double[] b = minus(solid.corner(t[1]), from);
      double[] c = minus(solid.corner(t[2]), from);
      double ab = dot(RAY, cross(a, b));
      double bc = dot(RAY, cross(b, c));
      double ca = dot(RAY, cross(c, a));
      boolean leaves = ab > 0 && bc > 0 && ca > 0;
      boolean enters = ab < 0 && bc < 0 && ca < 0;
      double ahead = dot(a, cross(b, c));
      // The plane lies ahead where the signed volume has the sign of the crossing
      if (leaves && ahead > 0) {
        balance++;
      } else if (enters && ahead < 0) {
        balance--;
      }
    }
    // Outward triangles: a ray from inside leaves once more than it enters
    if (balance != 0 && balance != 1) {
      throw new AssertionError("a ray crosses the surface " + balance + " times net");
    }
    return balance == 1;
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
