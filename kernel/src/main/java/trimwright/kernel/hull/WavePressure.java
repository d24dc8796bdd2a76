package trimwright.kernel.hull;

import trimwright.kernel.numeric.GaussLegendre;

/**
 * Wave resistance of a load on the water that moves: a pressure spread over a rectangle, parabolic
 * along the way (a float is deepest in its middle) and even across. Linear waves on deep water,
 *
 * <pre>  R = k³ / (pi rho g) int_0^(pi/2) |P|² sec⁵θ dθ,   k = g/V²,
 *   P(θ) the pressure's transform at the wave numbers k secθ and k sec²θ sinθ</pre>
 *
 * (T. H. Havelock, Wave Resistance, Proc. R. Soc. A 95, 1918, and the moving rectangle of J. N.
 * Newman and F. A. P. Poole, Schiffstechnik 9, 1962; from memory, the factor found anew from the
 * two-dimensional limit R = k² |p|² / (rho g) of H. Lamb, Hydrodynamics, 6th ed. 1932, articles
 * 242-245).
 *
 * <p>Meant for loads whose draft is small beside their length. Its humps and hollows at low speed
 * are those of a smooth load. Stateless.
 */
public final class WavePressure {
  /** Within 0.3 % of the hump up to a Froude number of 1.5; a test holds it there. */
  private static final GaussLegendre RULE = GaussLegendre.of(64);

  /** Beyond where width and length have evened all waves out: the integrand falls as e^(-4u). */
  private static final double TAIL = 1.5;

  /** Slower than this on the length's Froude number the waves carry nothing worth counting [1]. */
  private static final double SLOWEST_FROUDE = 0.12;

  /** From here on they count whole; between the two they come in without a jump [1]. */
  private static final double WHOLE_FROUDE = 0.16;

  private WavePressure() {}

  /**
   * Resistance of one newton squared.
   *
   * @param length of the rectangle [m]
   * @param width of the rectangle [m]
   * @param speed [m/s], 0 or more
   * @param density of the water [kg/m³]
   * @param gravity [m/s²]
   * @return resistance over the load squared [1/N]
   */
  public static double perLoadSquared(
      double length, double width, double speed, double density, double gravity) {
    double froude = speed / Math.sqrt(gravity * length);
    if (froude <= SLOWEST_FROUDE) {
      return 0;
    }
    double in = Math.min(1, (froude - SLOWEST_FROUDE) / (WHOLE_FROUDE - SLOWEST_FROUDE));
    double k = gravity / (speed * speed);
    // sec θ = cosh u.
    double evened = Math.max(Math.max(1, Math.sqrt(2 / (k * width))), 4 / (k * length));
    double last = Math.log(evened + Math.sqrt(evened * evened - 1)) + TAIL;
    double sum = 0;
    for (int i = 0; i < RULE.size(); i++) {
      double u = RULE.node(i, 0, last);
      double grown = Math.exp(u);
      double cosh = 0.5 * (grown + 1 / grown);
      double sinh = 0.5 * (grown - 1 / grown);
      double along = parabola(0.5 * k * length * cosh);
      double across = even(0.5 * k * width * cosh * sinh);
      double square = along * across * cosh * cosh;
      sum += RULE.weight(i, 0, last) * square * square;
    }
    return in * in * (3 - 2 * in) * k * k * k / (Math.PI * density * gravity) * sum;
  }

  /** Transform of a parabola over its own integral. */
  static double parabola(double s) {
    if (s < 1e-2) {
      return 1 - 0.1 * s * s;
    }
    return 3 * (Math.sin(s) - s * Math.cos(s)) / (s * s * s);
  }

  /** Transform of an even load over its own integral. */
  private static double even(double s) {
    return s < 1e-4 ? 1 : Math.sin(s) / s;
  }
}
