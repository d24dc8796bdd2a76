package trimwright.kernel.propel;

/**
 * Where the blades of a propeller cavitate: the thrust up to which a blade area suffices.
 *
 * <p>Source: J. auf 'm Keller, Enige aspecten bij het ontwerpen van scheepsschroeven, Schip en Werf
 * 24 (1966): AE/A0 = (1.3 + 0.3 Z) T / ((p0 - pv) D^2) + K, with K 0.2 for a single screw behind a
 * hull, 0.1 to 0 for fast twin-screw ships. From memory; the formula was seen in use by others with
 * the same constants, the paper is not in hand. It is a rule for ships' propellers at their own
 * speed, and an order of size here: K is 0.2, as the mast's wake is uneven too.
 */
public final class BladeCavitation {
  /** Share of the disc's area that the unevenness of the flow takes [1]. */
  private static final double UNEVEN = 0.2;

  private BladeCavitation() {}

  /**
   * The thrust up to which the blades are free of harmful cavitation.
   *
   * @param blades of the propeller
   * @param diameter [m]
   * @param pressure of water and air at the shaft over the vapour pressure [Pa]
   * @return thrust [N], 0 where the blades are too narrow for any
   */
  public static double thrustLimit(Blades blades, double diameter, double pressure) {
    double area = Math.max(0, blades.areaRatio() - UNEVEN);
    return area * Math.max(0, pressure) * diameter * diameter / (1.3 + 0.3 * blades.count());
  }
}
