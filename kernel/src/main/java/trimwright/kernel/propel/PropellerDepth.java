package trimwright.kernel.propel;

/**
 * How deep a propeller runs and what the surface takes from it.
 *
 * <p>Thrust kept: K. Minsaas, O. Faltinsen, B. Persson, On the importance of added resistance,
 * propeller immersion and propeller ventilation for large ships (PRADS 1983): 1 - 0.675 (1 - 0.769
 * h/R)^1.258 below h/R = 1.3, h the depth of the shaft. Air can be drawn down up to h/R = 3.4 where
 * a propeller is loaded heavily; A. M. Kozlowska, S. Steen, K. Koushan, Classification of different
 * type of propeller ventilation (smp 2009), of which the summary was read: it depends on load,
 * speed and submergence. Both figures from memory, the papers not in hand.
 *
 * @param shaft depth of the shaft below the still surface, or below the troughs of the chop [m]
 * @param radius of the propeller [m]
 */
public record PropellerDepth(double shaft, double radius) {
  private static final double FULL_THRUST = 1.3;
  private static final double LOSS = 0.675;
  private static final double PER_DEPTH = 0.769;
  private static final double POWER = 1.258;
  private static final double NO_AIR = 3.4;

  /** What air can do to the propeller. */
  public enum Air {
    /** None reaches it. */
    NONE,
    /** It can be drawn down while the propeller is loaded heavily, as at take-off. */
    UNDER_LOAD,
    /** It is near: chop, a wave or a turn lets it in. */
    NEAR,
    /** A blade's tip leaves the water at every turn. */
    TIP_OUT
  }

  /**
   * Depth of the upper tip.
   *
   * @return [m], negative above the water
   */
  public double tip() {
    return shaft - radius;
  }

  /**
   * Share of the thrust that is left at the same revolutions.
   *
   * @return from 0 to 1 [1]
   */
  public double thrustKept() {
    double ratio = shaft / radius;
    if (ratio >= FULL_THRUST) {
      return 1;
    }
    return Math.max(0, 1 - LOSS * Math.pow(Math.min(2, 1 - PER_DEPTH * ratio), POWER));
  }

  /** What air can do to it at this depth. */
  public Air air() {
    double ratio = shaft / radius;
    if (ratio < 1) {
      return Air.TIP_OUT;
    }
    if (ratio < FULL_THRUST) {
      return Air.NEAR;
    }
    return ratio < NO_AIR ? Air.UNDER_LOAD : Air.NONE;
  }
}
