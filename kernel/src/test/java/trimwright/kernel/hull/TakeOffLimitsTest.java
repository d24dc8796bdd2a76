package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.RideCase;

class TakeOffLimitsTest {
  private static final TakeOff CHOSEN =
      TakeOffSolver.of(TakeOffCases.example(), Posture.STANDING).solve();

  private static TakeOff tightened(RideLimit limit, double value) {
    RideCase c = TakeOffCases.example();
    RideCase tight =
        new RideCase(
            c.water(),
            c.airDensity(),
            c.headWind(),
            c.chopHeight(),
            c.rider(),
            c.setup(),
            c.immersion(),
            c.pullAboveDeck(),
            RideLimits.tightened(Map.of(limit, value)));
    return TakeOffSolver.of(tight, Posture.STANDING).solve();
  }

  @Test
  void aFlatterBoardLeavesTheWaterFaster() {
    TakeOff flat = tightened(RideLimit.TAKE_OFF_MOST_TRIM, Math.toRadians(4));
    assertThat(flat.liftOff().orElseThrow().speed())
        .isGreaterThan(CHOSEN.liftOff().orElseThrow().speed() + 0.2);
    assertThat(flat.liftOff().orElseThrow().trim()).isLessThanOrEqualTo(Math.toRadians(4) + 1e-9);
  }

  @Test
  void moreRoomToTheStallLeavesTheWaterFaster() {
    assertThat(tightened(RideLimit.STALL_MARGIN, Math.toRadians(8)).liftOff().orElseThrow().speed())
        .isGreaterThan(CHOSEN.liftOff().orElseThrow().speed());
  }

  @Test
  void aSlowerLimitMayLeaveNoLiftOff() {
    double below = CHOSEN.liftOff().orElseThrow().speed();
    assertThat(below).isBetween(3.0, 10.0);
    TakeOff slow = tightened(RideLimit.TAKE_OFF_SPEED, Math.max(4, 0.9 * below));
    assertThat(slow.lifts()).isEqualTo(below <= 4);
  }

  @Test
  void lessAccelerationTakesLonger() {
    assertThat(tightened(RideLimit.TAKE_OFF_ACCELERATION, 0.3).length().orElseThrow())
        .isGreaterThan(2 * CHOSEN.length().orElseThrow());
  }

  @Test
  void anotherPostureFromTheSameCraftIsThatOfASolverOfItsOwn() {
    TakeOff shared =
        TakeOffSolver.of(TakeOffCases.example(), Posture.STANDING).with(Posture.KNEELING).solve();
    assertThat(shared)
        .usingRecursiveComparison()
        .isEqualTo(TakeOffSolver.of(TakeOffCases.example(), Posture.KNEELING).solve());
    assertThat(shared.posture()).isEqualTo(Posture.KNEELING);
  }

  @Test
  void withoutARampTheRunIsThatOfFullThrust() {
    RampedRun run = RampedRun.of(CHOSEN, 0, 1.5).orElseThrow();
    // Simpson's rule over speed against steps in time
    assertThat(run.length()).isCloseTo(CHOSEN.length().orElseThrow(), within(0.03 * run.length()));
    assertThat(run.time()).isCloseTo(CHOSEN.time().orElseThrow(), within(0.03 * run.time()));
  }

  @Test
  void aSlowerThrottleTakesLonger() {
    double before = 0;
    for (double ramp : new double[] {0, 2, 4, 8, 15}) {
      RampedRun run = RampedRun.of(CHOSEN, ramp, 1.5).orElseThrow();
      assertThat(run.length()).isGreaterThan(before);
      assertThat(run.ramp()).isEqualTo(ramp);
      before = run.length();
    }
  }
}
