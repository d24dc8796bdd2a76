package trimwright.kernel.rig;

import trimwright.kernel.section.Finish;
import trimwright.kernel.section.FormFactor;
import trimwright.kernel.section.SkinFriction;

/**
 * Drag of a streamlined strut that pierces the surface, and of the corners where struts and wings
 * meet bodies. All by S. F. Hoerner, Fluid-Dynamic Drag, 1965: sections chapter 6, junctions
 * chapter 8, spray chapter 10 (coefficients recalled, book not in hand).
 */
public final class MastDrag {
  /**
   * Spray drag on thickness squared, per crossing of the surface; measured values scatter by about
   * 20 %.
   */
  public static final double SPRAY = 0.24;

  /**
   * Reynolds number of transition on a clean strut: the low end of the range of Schlichting's
   * resistance law for plates, 3e5 to 3e6 (from memory), since natural water is never as calm as a
   * tunnel's. Chosen within that range.
   */
  private static final double CLEAN_TRANSITION = 3e5;

  /** Transition on a scuffed strut: where a roughness near the nose trips the flow. Chosen. */
  private static final double SCUFFED_TRANSITION = 5e4;

  private MastDrag() {}

  /**
   * Drag of the wetted strut per unit of dynamic pressure.
   *
   * @param chord [m]
   * @param thickness [m]
   * @param wettedLength [m]
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @param finish surface
   * @return drag area [m²]
   */
  public static double profile(
      double chord, double thickness, double wettedLength, double reynoldsPerMetre, Finish finish) {
    double friction =
        SkinFriction.mixed(
            reynoldsPerMetre * chord,
            finish == Finish.CLEAN ? CLEAN_TRANSITION : SCUFFED_TRANSITION);
    return 2 * friction * FormFactor.section(thickness / chord) * chord * wettedLength;
  }

  /**
   * Spray where the strut pierces the surface, per unit of dynamic pressure. For high Froude
   * numbers on the chord.
   *
   * @param thickness [m]
   * @return drag area [m²]
   */
  public static double spray(double thickness) {
    return SPRAY * thickness * thickness;
  }

  /**
   * One corner between a strut or wing and a wall, per unit of dynamic pressure: t² (17 (t/c)² -
   * 0.05). Below a thickness of about 6 % the corner costs nothing measurable and the formula ends
   * at 0.
   *
   * @param chord of the strut or wing at the wall [m]
   * @param thickness of it there [m]
   * @return drag area [m²]
   */
  public static double junction(double chord, double thickness) {
    return thickness * thickness * junctionCoefficient(thickness / chord);
  }

  /**
   * The corner's coefficient on thickness squared.
   *
   * @param thicknessRatio thickness over chord [1]
   * @return 17 (t/c)² - 0.05, not below 0 [1]
   */
  public static double junctionCoefficient(double thicknessRatio) {
    return Math.max(0, 17 * thicknessRatio * thicknessRatio - 0.05);
  }
}
