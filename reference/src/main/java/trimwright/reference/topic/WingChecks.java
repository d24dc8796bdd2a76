package trimwright.reference.topic;

import java.util.Map;
import java.util.OptionalDouble;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.WingShape;

/** One wing alone in deep water. */
public final class WingChecks {
  /** Angle for slopes at no lift [rad]: small enough that the stall of sines does not show. */
  private static final double SMALL_ANGLE = 2e-3;

  /** Angle at which induced drag is taken [rad]; the factor hardly depends on it. */
  private static final double DRAG_ANGLE = Math.toRadians(2);

  private WingChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "wing lift slope", WingChecks::liftSlope,
        "wing lift slope over aspect ratio", WingChecks::liftSlopeOverAspectRatio,
        "wing moment slope about the apex", WingChecks::momentSlopeAboutApex,
        "wing induced drag factor", WingChecks::inducedDragFactor,
        "wing lift coefficient", WingChecks::liftCoefficient);
  }

  private static double liftSlope(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    SurfaceFlow flow = deep(shape, conditions, SMALL_ANGLE);
    return TestWings.liftCoefficient(flow, shape) / SMALL_ANGLE;
  }

  private static double liftSlopeOverAspectRatio(Conditions conditions) {
    return liftSlope(conditions) / TestWings.shape(conditions).aspectRatio();
  }

  private static double momentSlopeAboutApex(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    double rootQuarter = 0.25 * shape.stations().get(0).chord();
    double noseUp = deep(shape, conditions, SMALL_ANGLE).force().about(rootQuarter, 0).noseUp();
    return noseUp / (shape.area() * conditions.number("reference_chord") * SMALL_ANGLE);
  }

  private static double inducedDragFactor(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    SurfaceFlow flow = deep(shape, conditions, DRAG_ANGLE);
    String from = conditions.text("from");
    return factor(shape, flow, from);
  }

  /**
   * Induced drag times pi times aspect ratio over lift squared, from bound vortices or far wake.
   */
  static double factor(WingShape shape, SurfaceFlow flow, String from) {
    double drag =
        switch (from) {
          case "bound vortices" -> flow.boundDrag();
          case "far wake" -> flow.farFieldDrag();
          default -> throw new IllegalStateException("no induced drag comes from " + from);
        };
    double lift = TestWings.liftCoefficient(flow, shape);
    return drag / shape.area() * Math.PI * shape.aspectRatio() / (lift * lift);
  }

  private static double liftCoefficient(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    double angle = Math.toRadians(conditions.number("alpha_deg"));
    // A measured wing: every strip answers with its section's own slope.
    SurfaceFlow flow = TestWings.flow(shape, TestWings.FINE, angle, OptionalDouble.empty(), false);
    return TestWings.liftCoefficient(flow, shape);
  }

  private static SurfaceFlow deep(WingShape shape, Conditions conditions, double angle) {
    return TestWings.flow(shape, TestWings.size(conditions), angle, OptionalDouble.empty(), true);
  }
}
