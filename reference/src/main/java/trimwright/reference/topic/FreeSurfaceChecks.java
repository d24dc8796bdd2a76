package trimwright.reference.topic;

import java.util.Map;
import java.util.OptionalDouble;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.WingShape;

/** A wing below the surface at high Froude number, beside the same wing in deep water. */
public final class FreeSurfaceChecks {
  /** Small, so that leading and trailing edge have nearly the same depth [rad]. */
  private static final double ANGLE = Math.toRadians(0.2);

  private FreeSurfaceChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "root strip lift below the surface over deep", FreeSurfaceChecks::rootStripRatio,
        "wing lift below the surface over deep", FreeSurfaceChecks::liftRatio,
        "surface's share of induced drag", FreeSurfaceChecks::interferenceFactor);
  }

  /** The root strip of a very long wing stands for a section. */
  private static double rootStripRatio(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    LatticeSize size = TestWings.size(conditions);
    double depth = conditions.number("depth_chords") * shape.stations().get(0).chord();
    double below =
        TestWings.flow(shape, size, ANGLE, OptionalDouble.of(depth), true).stripLift()[0];
    return below / TestWings.flow(shape, size, ANGLE, OptionalDouble.empty(), true).stripLift()[0];
  }

  private static double liftRatio(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    double depth = conditions.number("depth_chords") * shape.meanChord();
    return flow(shape, OptionalDouble.of(depth)).force().up()
        / flow(shape, OptionalDouble.empty()).force().up();
  }

  /**
   * What the image adds to the induced drag of the same lift: the biplane's interference factor for
   * a gap of twice the depth.
   */
  private static double interferenceFactor(Conditions conditions) {
    WingShape shape = TestWings.shape(conditions);
    double depth = 0.5 * conditions.number("gap_over_span") * shape.span();
    String from = conditions.text("from");
    return WingChecks.factor(shape, flow(shape, OptionalDouble.of(depth)), from)
            / WingChecks.factor(shape, flow(shape, OptionalDouble.empty()), from)
        - 1;
  }

  private static SurfaceFlow flow(WingShape shape, OptionalDouble depth) {
    return TestWings.flow(shape, TestWings.FINE, ANGLE, depth, true);
  }
}
