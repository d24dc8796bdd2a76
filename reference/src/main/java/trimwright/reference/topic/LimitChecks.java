package trimwright.reference.topic;

import java.util.Map;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.turn.TurnPath;
import trimwright.kernel.water.Cavitation;

/** What ends a ride: the circle of a turn, and cavitation. */
public final class LimitChecks {
  private LimitChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "radius of a banked turn", LimitChecks::radius,
        "cavitation number times speed squared", LimitChecks::cavitation);
  }

  private static double radius(Conditions c) {
    double bank = Math.toRadians(c.number("bank_deg"));
    return TurnPath.of(c.number("speed_m_s"), bank, c.number("mass_centre_height_m"))
        .orElseThrow()
        .radius();
  }

  private static double cavitation(Conditions c) {
    double speed = c.number("speed_m_s");
    return Cavitation.number(WaterChecks.water(c), c.number("depth_m"), Craft.GRAVITY, speed)
        * speed
        * speed;
  }
}
