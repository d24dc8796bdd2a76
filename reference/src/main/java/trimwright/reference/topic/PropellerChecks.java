package trimwright.reference.topic;

import java.util.Map;
import trimwright.kernel.propel.ActuatorDisc;
import trimwright.kernel.propel.OpenWaterRow;
import trimwright.kernel.propel.SeriesPropeller;

/** Propellers. */
public final class PropellerChecks {
  private PropellerChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "ideal disc efficiency", c -> ActuatorDisc.idealEfficiency(c.number("thrust_loading")),
        "series thrust coefficient", c -> row(c).thrust(),
        "series torque coefficient times ten", c -> 10 * row(c).torque(),
        "series efficiency", c -> row(c).efficiency());
  }

  private static OpenWaterRow row(Conditions c) {
    SeriesPropeller propeller =
        new SeriesPropeller(
            (int) c.number("blades"), c.number("pitch_ratio"), c.number("area_ratio"));
    double advance = c.number("advance");
    return new OpenWaterRow(
        advance, propeller.seriesThrust(advance), propeller.seriesTorque(advance));
  }
}
