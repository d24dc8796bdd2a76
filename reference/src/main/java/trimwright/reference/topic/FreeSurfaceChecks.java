package trimwright.reference.topic;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.LiftingLine;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.WaveWash;
import trimwright.kernel.surface.WingShape;

/** A wing below the surface at high Froude number, beside the same wing in deep water. */
public final class FreeSurfaceChecks {
  /** Small, so that leading and trailing edge have nearly the same depth [rad]. */
  private static final double ANGLE = Math.toRadians(0.2);

  /** Standard gravity [m/s²]. */
  private static final double GRAVITY = 9.80665;

  /** Half span of a long line in waves' lengths over 2 pi. */
  private static final double LONG_WAVES = 150;

  private FreeSurfaceChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "root strip lift below the surface over deep", FreeSurfaceChecks::rootStripRatio,
        "wing lift below the surface over deep", FreeSurfaceChecks::liftRatio,
        "surface's share of induced drag", FreeSurfaceChecks::interferenceFactor,
        "wave drag of a vortex", FreeSurfaceChecks::waveDrag,
        "upwash of waves far behind a vortex", FreeSurfaceChecks::upwashBehind);
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

  /** Two-dimensional, per span, density and square of the circulation [1/m]. */
  private static double waveDrag(Conditions conditions) {
    double speed = conditions.number("speed_m_s");
    double depth = conditions.number("depth_m");
    return -twoDimensional(speed, depth, 1, wash -> wash.turn(0, 0));
  }

  /** Two-dimensional, per circulation [1/m], at the vortex's depth; its own and its image's too. */
  private static double upwashBehind(Conditions conditions) {
    double speed = conditions.number("speed_m_s");
    double depth = conditions.number("depth_m");
    double x = conditions.number("waves_behind") * 2 * Math.PI * speed * speed / GRAVITY;
    double vortices = (1 / x + x / (x * x + 4 * depth * depth)) / (2 * Math.PI);
    return twoDimensional(speed, depth, x, wash -> wash.turn(1, 0)) - vortices;
  }

  /**
   * A number of the two-dimensional flow about a vortex of unit circulation [1/m], from lifting
   * lines of two lengths: what the ends do falls with the length and drops out of twice the longer
   * less the shorter.
   */
  private static double twoDimensional(
      double speed, double depth, double distance, ToDoubleFunction<WaveWash> wash) {
    double[] value = new double[2];
    for (int i = 0; i < 2; i++) {
      double half = (i + 1) * LONG_WAVES * speed * speed / GRAVITY;
      LiftingLine[] lines = {
        new LiftingLine(half, distance, depth), new LiftingLine(half, 0, depth)
      };
      // An elliptical loading's mean square over the square of its mean is 8 / (3 pi² half span)
      // per metre.
      value[i] = wash.applyAsDouble(WaveWash.of(lines, speed)) * 3 * Math.PI * Math.PI * half / 8;
    }
    return 2 * value[1] - value[0];
  }

  private static SurfaceFlow flow(WingShape shape, OptionalDouble depth) {
    return TestWings.flow(shape, TestWings.FINE, ANGLE, depth, true);
  }
}
