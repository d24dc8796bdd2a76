package trimwright.kernel.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionMoment;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;

class PlaySolverTest {
  private static final PlaySolver PLAYS =
      new PlaySolver(MotionModel.large(CaseSolver.of(ExampleCase.PLAIN.build())));
  private static final MotionTrim TRIM = PLAYS.model().findTrim(24 / 3.6).orElseThrow();
  private static final FallDrive DRIVE = new FallDrive(0.3, OptionalDouble.empty());

  private static MotionTrace play(Play play) {
    return PLAYS.play(play, TRIM, DRIVE);
  }

  @ParameterizedTest
  @EnumSource(Play.class)
  void everyPlayBeginsAtTheTrimAndGoesOnInTime(Play play) {
    MotionTrace trace = play(play);
    MotionMoment first = trace.first();
    assertThat(first.time()).isZero();
    assertThat(first.speed()).isCloseTo(24 / 3.6, Offset.offset(1e-9));
    assertThat(first.immersion()).isCloseTo(0.45, Offset.offset(1e-9));
    double before = -1;
    for (MotionMoment m : trace.moments()) {
      assertThat(m.time()).isGreaterThan(before);
      before = m.time();
      assertThat(m.pitch()).isFinite();
      assertThat(m.load()).isPositive();
    }
    assertThat(trace.moments().size()).isGreaterThan(10);
  }

  /** Let go and you come down: common practice, no source. */
  @Test
  void lettingGoOfTheThrottleBringsTheNoseDownAndTheBodyForward() {
    MotionTrace cut = play(Play.THROTTLE_CUT);
    assertThat(cut.last().pitch()).isLessThan(cut.first().pitch());
    assertThat(cut.last().immersion()).isGreaterThan(cut.first().immersion());
    assertThat(cut.last().bodyAhead()).isPositive();
    assertThat(cut.last().speed()).isLessThan(cut.first().speed());
  }

  /** More throttle lifts: common practice, no source. */
  @Test
  void moreThrottleBringsTheCraftUp() {
    MotionTrace up = play(Play.THROTTLE_UP);
    assertThat(up.last().immersion()).isLessThan(up.first().immersion());
  }

  @Test
  void leansGoWhereTheyLean() {
    assertThat(play(Play.LEAN_FORWARD).last().pitch()).isLessThan(play(Play.CHOP).first().pitch());
    assertThat(play(Play.LEAN_BACK).last().pitch()).isGreaterThan(play(Play.CHOP).first().pitch());
    assertThat(play(Play.LEAN_BACK).end()).isNotEqualTo(MotionEnd.BOW_TOUCHES);
  }

  @Test
  void theBoardMeetsTheWaterAndComesOffAgain() {
    MotionTrace touch = play(Play.TOUCHDOWN);
    double least =
        touch.moments().stream()
            .mapToDouble(m -> Math.min(m.bowClearance(), m.sternClearance()))
            .min()
            .orElseThrow();
    // It touches, and no more than that: the weight goes back just in time.
    assertThat(least).isBetween(-0.03, 1e-3);
    assertThat(touch.end()).isEqualTo(MotionEnd.RAN_OUT);
  }
}
