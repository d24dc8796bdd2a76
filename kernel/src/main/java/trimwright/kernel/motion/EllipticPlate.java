package trimwright.kernel.motion;

/**
 * Water that goes along with a plate moved square to itself.
 *
 * <p>A strip of a long plate takes along the water of the cylinder about its chord, rho pi c²/4 per
 * span. A plate of finite length takes less: for an elliptic one the whole is (4/3) pi rho a b² /
 * E(k), a and b its half axes, k² = 1 - b²/a², E the complete elliptic integral of the second kind
 * (H. Lamb, Hydrodynamics, 6th ed. 1932, from the ellipsoid of article 114 made flat; from memory;
 * a disc's 8/3 rho a³ is its limit), and strips would say (4/3) pi rho a b².
 */
public final class EllipticPlate {
  private EllipticPlate() {}

  /**
   * The added mass over that of strips.
   *
   * @param aspectRatio span² over area, at least 4/pi, that of a disc [1]
   * @return share, 0.637 for a disc, towards 1 for a long plate [1]
   */
  public static double shareOfStrips(double aspectRatio) {
    // Of an ellipse with half axes a, b: aspect ratio 4 a / (pi b).
    double b = Math.min(1, 4 / (Math.PI * aspectRatio));
    return 1 / completeElliptic(b);
  }

  /**
   * E for a complementary modulus, by the arithmetic and geometric mean (M. Abramowitz, I. A.
   * Stegun, Handbook of Mathematical Functions, 1964, 17.6, from memory).
   */
  static double completeElliptic(double complementary) {
    double a = 1;
    double b = complementary;
    double c = Math.sqrt(Math.max(0, 1 - b * b));
    double sum = 0.5 * c * c;
    double power = 0.5;
    while (c > 1e-15) {
      c = 0.5 * (a - b);
      double mean = 0.5 * (a + b);
      b = Math.sqrt(a * b);
      a = mean;
      power *= 2;
      sum += power * c * c;
    }
    return Math.PI / (2 * a) * (1 - sum);
  }
}
