package trimwright.kernel.trim;

import java.util.Arrays;
import java.util.List;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.ModelFactors;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.LiftingLine;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.ProfileForces;
import trimwright.kernel.surface.StripCoupling;
import trimwright.kernel.surface.StripPolars;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.surface.WaveWash;
import trimwright.kernel.surface.WingWake;

/**
 * What flows at a craft's two wings at a speed besides the lattice's flow: their sections, the
 * waves that each feels of both, and the front wing's wake at the stabilizer. Immutable.
 */
public final class WingCouplings implements Couplings {
  /**
   * Slowest speed whose waves are worked out [m/s]: slower, they are as short as the wings, and
   * nobody flies. Below it the waves are those of this speed. Chosen.
   */
  private static final double SLOWEST_WAVES = 1.3;

  private static final double[] NOTHING_ADDED = {0, 0};

  private final Craft craft;
  private final SurfaceResponse response;
  private final ProfileForces front;
  private final ProfileForces tail;
  private final LiftingLine[] lines;
  private final WingWake wake;
  private final ModelFactors factors;

  /**
   * The couplings that a trim of this craft stands on.
   *
   * @param craft the craft
   * @param response the lattice's flow about its wings
   * @return couplings at every speed and pitch
   */
  public static Couplings of(Craft craft, SurfaceResponse response) {
    return new WingCouplings(craft, response);
  }

  private WingCouplings(Craft craft, SurfaceResponse response) {
    this.craft = craft;
    this.response = response;
    factors = craft.factors();
    List<PlacedWing> wings = craft.wings();
    front = new ProfileForces(wings.get(0), craft.rideCase().setup().frontWing().finish());
    tail = new ProfileForces(wings.get(1), craft.rideCase().setup().stabilizer().finish());
    double depth = craft.datumDepth(0);
    lines =
        new LiftingLine[] {
          LiftingLine.of(wings.get(0), depth), LiftingLine.of(wings.get(1), depth)
        };
    wake = new WingWake(wings.get(0), wings.get(1));
  }

  @Override
  public AtSpeed at(double speed) {
    double perMetre = speed / craft.rideCase().water().kinematicViscosity();
    StripPolars ahead = front.at(perMetre);
    StripPolars behind = tail.at(perMetre);
    StripCoupling sections = StripCoupling.of(List.of(ahead, behind));
    WaveWash waves = WaveWash.of(lines, Math.max(speed, SLOWEST_WAVES));
    return pitch ->
        sections
            .withOnset(turns(waves, pitch), NOTHING_ADDED)
            .withStreams(streams(waves, ahead, behind.count(), pitch));
  }

  /** The front wing's depth is given; the stabilizer's changes with the pitch. */
  private double[][] turns(WaveWash waves, double pitch) {
    double deeper = stabilizerDepth(pitch) - stabilizerDepth(0);
    double[][] turns = new double[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        turns[i][j] = waves.turn(i, j);
        if (i + j > 0) {
          turns[i][j] += deeper * waves.turnWithDepth(i, j);
        }
        turns[i][j] *= factors.waves();
      }
    }
    return turns;
  }

  private double stabilizerDepth(double pitch) {
    PlacedWing stabilizer = craft.wings().get(1);
    return craft.datumDepth(pitch)
        - stabilizer.ahead() * Math.sin(pitch)
        - stabilizer.above() * Math.cos(pitch);
  }

  /**
   * Dynamic pressure at the strips over that of the undisturbed stream: the waves' flow along the
   * stream, and what the front wing's wake has lost. Both follow the lift and the drag of the
   * straight lines, of which they are small shares.
   */
  private double[][] streams(WaveWash waves, StripPolars ahead, int behind, double pitch) {
    SurfaceFlow flow = response.at(0, pitch);
    double frontLift = flow.force().up();
    double tailLift = response.at(1, pitch).force().up();
    double[] angles = ahead.straightAngles(flow.stripLift());
    double[] drag = new double[angles.length];
    for (int k = 0; k < drag.length; k++) {
      drag[k] = ahead.drag(k, angles[k]);
    }
    double[][] streams = {new double[angles.length], new double[behind]};
    Arrays.fill(streams[0], square(1 + growth(waves, 0, frontLift, tailLift)));
    wake.pressureLeft(pitch, drag, frontLift, streams[1]);
    double factor = square(1 + growth(waves, 1, frontLift, tailLift));
    for (int k = 0; k < behind; k++) {
      streams[1][k] = factor * (1 - factors.wake() * (1 - streams[1][k]));
    }
    return streams;
  }

  private double growth(WaveWash waves, int at, double frontLift, double tailLift) {
    return factors.waves() * (waves.speedUp(at, 0) * frontLift + waves.speedUp(at, 1) * tailLift);
  }

  private static double square(double x) {
    return x * x;
  }
}
