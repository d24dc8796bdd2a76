package trimwright.reference.topic;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.WingShape;

/**
 * Wing and tail together. The textbook's examples are held against the arithmetic of forces and
 * moments that the trim is made of; the downwash against the coupled lattice.
 *
 * <p>Mind the sign: the textbook counts the tail's setting angle positive with the leading edge
 * <em>down</em>; here it is positive with the leading edge up, and the row's angle is turned over
 * on the way in.
 */
public final class TailChecks {
  private static final double ANGLE = Math.toRadians(1);

  private TailChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "downwash far behind over lifting line",
        TailChecks::downwashRatio,
        "balance moment coefficient",
        c -> Example.of(c).moment(c.number("alpha_deg")),
        "balance moment slope per degree",
        c -> Example.of(c).momentSlope(),
        "balance neutral point",
        TailChecks::neutralPoint);
  }

  /**
   * A small surface far behind the wing is the probe: the share of lift it loses beside itself
   * alone is the downwash over the angle of attack. It is put at the height of the wake.
   */
  private static double downwashRatio(Conditions conditions) {
    WingShape wing = TestWings.shape(conditions);
    double behind = conditions.number("spans_behind") * wing.span();
    double scale = conditions.number("probe_span_share");
    WingShape probe =
        new WingShape(
            wing.span() * scale,
            wing.stations().stream()
                .map(s -> new Station(s.fraction(), s.chord() * scale, 0, 0, 0, s.section()))
                .toList());
    LatticeSize few = new LatticeSize(12, 2);
    PlacedWing front = new PlacedWing(wing, 0, 0, 0, TestWings.FINE);
    PlacedWing rear = new PlacedWing(probe, -behind, behind * Math.tan(ANGLE), 0, few);
    List<SurfaceFlow> both =
        TestWings.flows(List.of(front, rear), ANGLE, OptionalDouble.empty(), true);
    double alone =
        TestWings.flows(List.of(rear), ANGLE, OptionalDouble.empty(), true).get(0).force().up();
    double downwash = ANGLE * (1 - both.get(1).force().up() / alone);
    double lift = TestWings.liftCoefficient(both.get(0), wing);
    return downwash / (2 * lift / (Math.PI * wing.aspectRatio()));
  }

  private static double neutralPoint(Conditions conditions) {
    Example example = Example.of(conditions);
    double centreOfMass = conditions.number("h");
    // The textbook divides by the wing's lift slope and keeps the tail arm: so does this row.
    return centreOfMass - example.momentSlope() / example.wingSlope;
  }

  /** The textbook's wing with its tail, at unit dynamic pressure. Slopes per degree. */
  private record Example(
      double area,
      double chord,
      double tailArea,
      double tailArm,
      double wingSlope,
      double tailSlope,
      double tailAngleUp,
      double downwashSlope,
      double centreAhead,
      double momentAtAerodynamicCentre) {

    static Example of(Conditions c) {
      return new Example(
          c.number("area"),
          c.number("chord"),
          c.number("tail_area"),
          c.number("tail_arm"),
          c.number("wing_slope_per_deg"),
          c.number("tail_slope_per_deg"),
          -c.number("tail_leading_edge_down_deg"),
          c.number("downwash_slope"),
          c.number("h_less_hac") * c.number("chord"),
          c.number("cm_ac"));
    }

    /** Moment about the centre of mass over area and chord, at an absolute angle of attack. */
    double moment(double alphaDegrees) {
      double wingLift = wingSlope * alphaDegrees * area;
      double tailAngle = alphaDegrees * (1 - downwashSlope) + tailAngleUp;
      double tailLift = tailSlope * tailAngle * tailArea;
      PlaneForce wing =
          PlaneForce.at(0, wingLift, centreAhead, 0)
              .plus(new PlaneForce(0, 0, momentAtAerodynamicCentre * area * chord));
      PlaneForce tail = PlaneForce.at(0, tailLift, -tailArm, 0);
      return wing.plus(tail).noseUp() / (area * chord);
    }

    double momentSlope() {
      return moment(1) - moment(0);
    }
  }
}
