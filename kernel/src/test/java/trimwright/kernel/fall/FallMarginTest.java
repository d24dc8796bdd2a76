package trimwright.kernel.fall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionMoment;
import trimwright.kernel.motion.MotionTrace;

class FallMarginTest {
  private static final double LAST = 0.4;

  private static MotionTrace trace(MotionEnd end) {
    return new MotionTrace(
        List.of(new MotionMoment(LAST, 6, 0, 0, 0.45, 0.2, 100, 0, 0.1, 0.1, 0.3, 0.2, 0, 800)),
        end);
  }

  @Test
  void aBreachThatWasNotFollowedToItsEndKeepsWhatWasFollowed() {
    assertThat(breach(MotionEnd.LIMIT_OF_MODEL).margin()).isEqualTo(LAST);
    assertThat(breach(MotionEnd.RAN_OUT).margin()).isInfinite();
  }

  @Test
  void soDoesANoseDropButForASternThatTouchesFirst() {
    assertThat(drop(MotionEnd.LIMIT_OF_MODEL).bowClearFor()).isEqualTo(LAST);
    assertThat(drop(MotionEnd.STERN_TOUCHES).bowClearFor()).isInfinite();
    assertThat(drop(MotionEnd.BOW_TOUCHES).bowClearFor()).isEqualTo(LAST);
    assertThat(drop(MotionEnd.RAN_OUT).bowClearFor()).isInfinite();
  }

  private static Breach breach(MotionEnd end) {
    return new Breach(OptionalDouble.empty(), end, trace(end));
  }

  private static NoseDrop drop(MotionEnd end) {
    boolean touched = end == MotionEnd.BOW_TOUCHES || end == MotionEnd.STERN_TOUCHES;
    return new NoseDrop(
        -0.1,
        0,
        touched ? OptionalDouble.of(LAST) : OptionalDouble.empty(),
        end == MotionEnd.BOW_TOUCHES,
        trace(end));
  }
}
