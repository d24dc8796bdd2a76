package trimwright.fitting.judge;

import trimwright.kernel.rig.RideCase;
import trimwright.kernel.water.Water;

/**
 * The case whose table serves others near to it: depth and viscosity rounded, so that a shop's
 * tables serve all its riders and waters. Loads in a table are per dynamic pressure; the water's
 * own density comes in with the balance.
 *
 * <p>Rounded depths are off by {@value #DEPTH_STEP} m over two at most, viscosities by 2.5 % (a
 * third of what 3 K make): the pitch moves by less than 0.03 degrees and the foot pressure by less
 * than 1 mm, as a test holds.
 */
public final class TableCase {
  /** Step of depths that have tables of their own [m]. */
  private static final double DEPTH_STEP = 0.025;

  /** Ratio of viscosities next to each other that have tables of their own [1]. */
  private static final double VISCOSITY_RATIO = 1.05;

  /** Viscosity that others are counted from: fresh water of about 20 °C [m²/s]. */
  private static final double VISCOSITY = 1e-6;

  /** Density of the tables' water: that of fresh water; it cancels but for rounding [kg/m³]. */
  private static final double DENSITY = 1000;

  private TableCase() {}

  /**
   * The case whose table serves.
   *
   * @param c a case
   * @return the same with depth and viscosity rounded
   */
  public static RideCase of(RideCase c) {
    double step =
        Math.rint(Math.log(c.water().kinematicViscosity() / VISCOSITY) / Math.log(VISCOSITY_RATIO));
    Water water = new Water(DENSITY, VISCOSITY * Math.pow(VISCOSITY_RATIO, step), 0);
    double depth = Math.max(DEPTH_STEP, DEPTH_STEP * Math.rint(c.immersion() / DEPTH_STEP));
    return new RideCase(
        water,
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        c.rider(),
        c.setup(),
        depth,
        c.pullAboveDeck(),
        c.limits());
  }
}
