package trimwright.kernel.water;

/**
 * How far the pressure in undisturbed water lies above the vapour's, and the cavitation number
 *
 * <pre>  sigma = (atmosphere + density gravity depth - vapour pressure) / (density V² / 2)</pre>
 *
 * (definition; S. F. Hoerner and H. V. Borst, Fluid-Dynamic Lift, 1975, ch. on hydrofoils, gives
 * 195/V² near the surface of the sea). Vapour appears where the pressure coefficient falls to minus
 * sigma; nuclei and roughness shift that. Stateless.
 */
public final class Cavitation {
  /** Standard atmosphere [Pa], ISO 2533. */
  public static final double ATMOSPHERE = 101_325;

  private Cavitation() {}

  /**
   * Pressure at a depth over the vapour pressure.
   *
   * @param water the water
   * @param depth below the still surface [m]
   * @param gravity [m/s²]
   * @return pressure [Pa]
   */
  public static double pressureAboveVapour(Water water, double depth, double gravity) {
    return ATMOSPHERE + water.density() * gravity * depth - water.vapourPressure();
  }

  /**
   * The cavitation number.
   *
   * @param water the water
   * @param depth below the still surface [m]
   * @param gravity [m/s²]
   * @param speed [m/s], above 0
   * @return number [1]
   */
  public static double number(Water water, double depth, double gravity, double speed) {
    return pressureAboveVapour(water, depth, gravity) / (0.5 * water.density() * speed * speed);
  }
}
