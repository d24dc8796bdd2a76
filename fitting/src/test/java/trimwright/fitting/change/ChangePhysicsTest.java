package trimwright.fitting.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trimwright.fitting.change.SampleRide.DEGREE;
import static trimwright.fitting.change.SampleRide.LEVEL;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.fitting.judge.FullJudge;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.TrimPoint;

/** What single changes do to deck and feet. */
class ChangePhysicsTest {
  private final SetupChanger changer = new SetupChanger(LEVEL.ride(), OwnParts.NONE);

  @Test
  void aWedgeTurnsTheDeckAndLeavesTheFeetAlone() {
    TrimPoint now = trim(List.of());
    for (double angle : new double[] {-4 * DEGREE, -DEGREE, 0.5 * DEGREE, 3 * DEGREE}) {
      TrimPoint then = trim(List.of(Change.by(ChangeKind.WEDGE, angle)));
      assertThat(then.pitch() - now.pitch()).isCloseTo(angle, within(0.02 * Math.abs(angle)));
      assertThat(then.footShare()).isCloseTo(now.footShare(), within(0.005));
    }
  }

  @Test
  void aShimTheOtherWayMovesTheOtherWay() {
    TrimPoint now = trim(List.of());
    TrimPoint up = trim(List.of(Change.by(ChangeKind.SHIM, DEGREE)));
    TrimPoint down = trim(List.of(Change.by(ChangeKind.SHIM, -DEGREE)));
    // Lift at the back presses the nose down: the weight has to go back.
    assertThat(up.footShare()).isLessThan(now.footShare() - 0.02);
    assertThat(down.footShare()).isGreaterThan(now.footShare() + 0.02);
    assertThat(up.pitch()).isLessThan(now.pitch());
    assertThat(down.pitch()).isGreaterThan(now.pitch());
  }

  @Test
  void feetMovedAndMastMovedTheOtherWayAreOneCure() {
    TrimPoint feet = trim(List.of(Change.by(ChangeKind.STANCE, 0.03)));
    TrimPoint mast = trim(List.of(Change.by(ChangeKind.TRACK, -0.03)));
    TrimPoint now = trim(List.of());
    assertThat(feet.footShare()).isLessThan(now.footShare());
    assertThat(mast.footShare()).isLessThan(now.footShare());
    assertThat(feet.pitch()).isCloseTo(now.pitch(), within(1e-9));
  }

  private TrimPoint trim(List<Change> changes) {
    RideCase ride = changer.after(changes).orElseThrow();
    return new FullJudge(LEVEL.asked(), SampleRide.TABLES)
        .ride(ride)
        .wished()
        .findPoint()
        .orElseThrow();
  }
}
