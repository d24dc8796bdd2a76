package trimwright.kernel.fall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;

/** Caps on a case that nobody rides, mast and fuselage twice as long, so that there are some. */
class CapSearchTest {
  private static final CaseSolver STRETCHED = CaseSolver.of(stretched());

  private static RideCase stretched() {
    RideCase c = ExampleCase.PLAIN.withImmersion(0.8).build();
    Setup s = c.setup();
    Mast m = s.mast();
    Mast longer =
        new Mast(
            1.6,
            m.chord(),
            m.thickness(),
            m.baseAngle(),
            m.rake(),
            m.mass(),
            m.massAboveAxis(),
            m.volume(),
            m.finish());
    return new RideCase(
        c.water(),
        c.airDensity(),
        0.8,
        0.8,
        c.rider(),
        new Setup(
            s.board(),
            s.battery(),
            longer,
            s.drive(),
            new Fuselage(1.500, 0.032, 0.150, 1.200, 1.2, 0.100, 0),
            s.frontWing(),
            s.stabilizer(),
            s.shim()),
        0.8,
        c.pullAboveDeck());
  }

  @Test
  void capsHoldAtEverySpeedUpToThem() {
    FallDrive drive = new FallDrive(0.3, OptionalDouble.empty());
    FallSolver falls = new FallSolver(MotionModel.large(STRETCHED));
    FallStudy study = FallStudy.find(falls, drive, () -> false).orElseThrow();
    RideLimits limits = STRETCHED.rideCase().limits();
    FallCaps caps = study.findCaps(Posture.PRONE).orElseThrow();
    FallDrive capped = new FallDrive(caps.ramp(), caps.power());
    List<FallPoint> points = study.of(Posture.PRONE);
    for (FallPoint p : points) {
      if (p.speed() <= caps.speed() + 1e-9) {
        MotionTrim trim = falls.findTrim(p.speed()).orElseThrow();
        assertThat(falls.at(trim, Posture.PRONE, capped).inside(limits)).isTrue();
        // The power that is permitted rides at that speed.
        double needed =
            falls.model().findPowertrain().orElseThrow().electricPower(trim.thrust(), trim.speed());
        assertThat(caps.power().orElse(Double.POSITIVE_INFINITY)).isGreaterThan(needed);
      }
    }
    assertThat(caps.whole()).isEqualTo(caps.speed() == points.get(points.size() - 1).speed());
  }
}
