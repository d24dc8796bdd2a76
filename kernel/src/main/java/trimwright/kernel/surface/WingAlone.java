package trimwright.kernel.surface;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.section.Finish;
import trimwright.kernel.water.Water;

/**
 * One wing by itself, its root quarter chord at a given depth. Coefficients are made dimensionless
 * with area and mean chord; moments are about the root quarter chord.
 *
 * <p>One object holds a workspace: not for use by two threads.
 */
public final class WingAlone {
  /** Step of the angle for slopes [rad]. */
  private static final double SLOPE_STEP = 1e-3;

  private final PlacedWing wing;
  private final Lattice lattice;
  private final ProfileForces sections;
  private final OptionalDouble immersion;
  private final boolean inviscid;
  private final double area;
  private final double meanChord;
  private final double aspectRatio;
  private final double zeroLiftAngle;
  private final double liftSlope;
  private final double momentSlope;

  private WingAlone(
      WingShape shape,
      Finish finish,
      OptionalDouble immersion,
      LatticeSize size,
      boolean inviscid) {
    wing = new PlacedWing(shape, 0, 0, 0, size);
    lattice = new Lattice(List.of(wing), inviscid);
    sections = new ProfileForces(wing, finish);
    this.immersion = immersion;
    this.inviscid = inviscid;
    area = shape.area();
    meanChord = shape.meanChord();
    aspectRatio = shape.aspectRatio();
    // Lift is nearly straight in the angle: two secant steps find where it vanishes.
    double a0 = 0;
    double f0 = flow(a0).force().up();
    double a1 = -0.05;
    double f1 = flow(a1).force().up();
    for (int i = 0; i < 8 && Math.abs(f1) > 1e-12 * area && f1 != f0; i++) {
      double a2 = a1 - f1 * (a1 - a0) / (f1 - f0);
      a0 = a1;
      f0 = f1;
      a1 = a2;
      f1 = flow(a1).force().up();
    }
    zeroLiftAngle = a1;
    PlaneForce low = flow(zeroLiftAngle - SLOPE_STEP).force();
    PlaneForce high = flow(zeroLiftAngle + SLOPE_STEP).force();
    liftSlope = (high.up() - low.up()) / (2 * SLOPE_STEP * area);
    momentSlope = (high.noseUp() - low.noseUp()) / (2 * SLOPE_STEP * area * meanChord);
  }

  /**
   * A wing alone.
   *
   * @param shape geometry
   * @param finish surface
   * @param immersion depth of the root quarter chord [m]; empty for deep water
   * @param size lattice
   * @param inviscid thin surfaces without friction or lift limit: the lattice alone with the
   *     sections' zero-lift angles
   * @return the wing
   */
  public static WingAlone of(
      WingShape shape,
      Finish finish,
      OptionalDouble immersion,
      LatticeSize size,
      boolean inviscid) {
    return new WingAlone(shape, finish, immersion, size, inviscid);
  }

  /**
   * The wing at one angle and speed. Near the surface its waves are in, but with {@code inviscid}.
   *
   * @param angleOfAttack root chord against the stream [rad]
   * @param speed [m/s]
   * @param water the water
   * @return coefficients
   */
  public WingCoefficients at(double angleOfAttack, double speed, Water water) {
    SurfaceFlow flow = flow(angleOfAttack);
    if (inviscid) {
      return coefficients(angleOfAttack, flow, false, 0);
    }
    StripCoupling coupling = coupling(flow, speed, speed / water.kinematicViscosity());
    CoupledFlow coupled =
        coupling.solve(
            new FixedResponse(angleOfAttack, List.of(flow), lattice::shifts), angleOfAttack);
    WingLoad load = coupled.wings().get(0);
    SurfaceFlow all =
        new SurfaceFlow(load.force(), load.boundDrag(), load.farFieldDrag(), load.stripLift());
    return coefficients(angleOfAttack, all, load.stalled() > 0, coupled.residual());
  }

  /** The sections, in the stream that the wing's own waves leave. */
  private StripCoupling coupling(SurfaceFlow flow, double speed, double reynoldsPerMetre) {
    StripPolars polars = sections.at(reynoldsPerMetre);
    StripCoupling still = StripCoupling.of(List.of(polars));
    if (immersion.isEmpty()) {
      return still;
    }
    LiftingLine line = LiftingLine.of(wing, immersion.getAsDouble());
    WaveWash waves = WaveWash.of(new LiftingLine[] {line}, speed);
    double growth = 1 + waves.speedUp(0, 0) * flow.force().up();
    double[] stream = new double[polars.count()];
    Arrays.fill(stream, growth * growth);
    return still
        .withOnset(new double[][] {{waves.turn(0, 0)}}, new double[] {0})
        .withStreams(new double[][] {stream});
  }

  private WingCoefficients coefficients(
      double angleOfAttack, SurfaceFlow flow, boolean stalled, double residual) {
    PlaneForce force = flow.force();
    return new WingCoefficients(
        angleOfAttack,
        force.up() / area,
        -force.forward() / area,
        force.noseUp() / (area * meanChord),
        flow.boundDrag() / area,
        flow.farFieldDrag() / area,
        sections.minimumPressure(flow.stripLift()),
        stalled,
        residual);
  }

  /** Root chord's angle of no lift [rad]. */
  public double zeroLiftAngle() {
    return zeroLiftAngle;
  }

  /** Slope of the lift coefficient at no lift [1/rad]. */
  public double liftSlope() {
    return liftSlope;
  }

  /** Slope of the moment coefficient about the root quarter chord at no lift [1/rad]. */
  public double momentSlope() {
    return momentSlope;
  }

  /**
   * Induced drag against that of an elliptical loading in deep water: CDi pi AR / CL², from the
   * wake far behind, at 5 degrees above no lift [1].
   */
  public double inducedDragFactor() {
    SurfaceFlow flow = flow(zeroLiftAngle + Math.toRadians(5));
    double cl = flow.force().up() / area;
    return flow.farFieldDrag() / area * Math.PI * aspectRatio / (cl * cl);
  }

  /**
   * The lattice's flow at an angle, without friction or lift limit.
   *
   * @param angleOfAttack root chord against the stream [rad]
   * @return flow per unit of dynamic pressure, moment about the root quarter chord
   */
  public SurfaceFlow flow(double angleOfAttack) {
    lattice.solve(angleOfAttack, immersion);
    return lattice.flows().get(0);
  }
}
