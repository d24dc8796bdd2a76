package trimwright.reference.topic;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import trimwright.kernel.layer.Disturbance;
import trimwright.kernel.section.PolarRow;
import trimwright.kernel.section.PolarSweep;
import trimwright.kernel.section.Sections;
import trimwright.kernel.section.ViscousSurface;

/**
 * The viscous section solver against tunnels: all polars with the disturbance of a low-turbulence
 * tunnel, none of whose constants is fitted to any row.
 */
public final class ViscousChecks {
  /** Angles of a polar, in whole degrees. */
  private static final int FROM_DEGREES = -10;

  private static final int TO_DEGREES = 20;

  private final Map<String, ViscousSurface> surfaces = new HashMap<>();
  private final Map<String, PolarRow> polars = new HashMap<>();

  private ViscousChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    ViscousChecks checks = new ViscousChecks();
    Map<String, Computation> all = new HashMap<>();
    all.put("viscous zero-lift angle", c -> Math.toDegrees(checks.polar(c).zeroLiftAngle()));
    all.put("viscous lift slope", checks::slope);
    all.put("viscous lift slope between angles", checks::slopeBetween);
    all.put("viscous moment at no lift", checks::moment);
    all.put("viscous smallest drag", c -> checks.polar(c).minimumDrag());
    all.put("viscous drag at a lift", checks::dragAt);
    all.put("viscous largest lift", c -> checks.polar(c).maximumLift());
    all.put("viscous minimum pressure", checks::pressure);
    return all;
  }

  private PolarRow polar(Conditions conditions) {
    String section = conditions.text("section");
    double reynolds = conditions.number("reynolds");
    double trip = conditions.has("trip") ? conditions.number("trip") : 1;
    return polars.computeIfAbsent(
        section + " " + reynolds + " " + trip, key -> sweep(section, reynolds, trip));
  }

  private PolarRow sweep(String section, double reynolds, double trip) {
    ViscousSurface surface =
        surfaces.computeIfAbsent(section, code -> ViscousSurface.of(Sections.naca(code).shape()));
    double[] angles =
        IntStream.rangeClosed(FROM_DEGREES, TO_DEGREES).mapToDouble(Math::toRadians).toArray();
    return PolarSweep.run(surface, angles, reynolds, Disturbance.TUNNEL, trip);
  }

  /** Per degree, between 4 degrees below and above the angle of no lift. */
  private double slope(Conditions conditions) {
    return Math.toRadians(polar(conditions).meanSlope(Math.toRadians(4)));
  }

  private double slopeBetween(Conditions conditions) {
    PolarRow polar = polar(conditions);
    double from = conditions.number("from_deg");
    double to = conditions.number("to_deg");
    return (polar.lift(Math.toRadians(to)) - polar.lift(Math.toRadians(from))) / (to - from);
  }

  private double moment(Conditions conditions) {
    PolarRow polar = polar(conditions);
    return polar.moment(polar.zeroLiftAngle());
  }

  private double dragAt(Conditions conditions) {
    PolarRow polar = polar(conditions);
    double lift = conditions.number("lift");
    double low = polar.zeroLiftAngle();
    double high = polar.angleOfMaximumLift();
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (polar.lift(middle) < lift) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return polar.drag(low);
  }

  private double pressure(Conditions conditions) {
    return polar(conditions).minimumPressure(Math.toRadians(conditions.number("alpha_deg")));
  }
}
