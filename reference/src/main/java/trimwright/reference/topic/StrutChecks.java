package trimwright.reference.topic;

import java.util.Map;
import trimwright.kernel.rig.BodyDrag;
import trimwright.kernel.rig.MastDrag;
import trimwright.kernel.section.FormFactor;
import trimwright.kernel.section.SkinFriction;

/** Mast, fuselage and bodies. */
public final class StrutChecks {
  private StrutChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "spray coefficient on thickness squared", StrutChecks::spray,
        "section form factor", c -> FormFactor.section(c.number("thickness_ratio")),
        "body drag over plate friction", StrutChecks::bodyFactor,
        "junction coefficient on thickness squared", StrutChecks::junction);
  }

  private static double spray(Conditions conditions) {
    double thickness = conditions.number("thickness_m");
    return MastDrag.spray(thickness) / (thickness * thickness);
  }

  private static double junction(Conditions conditions) {
    double chord = conditions.number("chord_m");
    double thickness = conditions.number("thickness_ratio") * chord;
    return MastDrag.junction(chord, thickness) / (thickness * thickness);
  }

  private static double bodyFactor(Conditions conditions) {
    double length = conditions.number("length_m");
    double diameter = conditions.number("diameter_ratio") * length;
    double reynoldsPerMetre = conditions.number("reynolds") / length;
    double plate =
        SkinFriction.turbulent(conditions.number("reynolds")) * Math.PI * diameter * length;
    return BodyDrag.of(length, diameter, reynoldsPerMetre) / plate;
  }
}
