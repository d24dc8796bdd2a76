package trimwright.kernel.rig;

import trimwright.kernel.section.FormFactor;
import trimwright.kernel.section.SkinFriction;

/**
 * Drag of slender bodies along the stream: turbulent friction on the wetted surface times a form
 * factor (S. F. Hoerner, Fluid-Dynamic Drag, 1965, chapter 6, recalled).
 */
public final class BodyDrag {
  private BodyDrag() {}

  /**
   * Drag per unit of dynamic pressure.
   *
   * @param length [m]
   * @param diameter [m]; above the length it counts as a sphere's
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return drag area [m²]
   */
  public static double of(double length, double diameter, double reynoldsPerMetre) {
    double wetted = Math.PI * diameter * length;
    // Beyond a sphere the slender-body factor has no meaning; the schema lets stubby pods through.
    double slenderness = Math.min(1, diameter / length);
    return SkinFriction.turbulent(reynoldsPerMetre * length)
        * FormFactor.body(slenderness)
        * wetted;
  }
}
