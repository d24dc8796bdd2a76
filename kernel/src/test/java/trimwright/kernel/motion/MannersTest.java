package trimwright.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static trimwright.kernel.motion.MotionCases.KMH;
import static trimwright.kernel.motion.MotionCases.SMALL;
import static trimwright.kernel.motion.MotionCases.SPEEDS;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;

class MannersTest {
  @Test
  void theyAreWhatAStepOverTimeShows() {
    for (double speed : SPEEDS) {
      Manners manners = SMALL.findManners(speed).orElseThrow();
      MotionTrim trim = SMALL.findTrim(speed).orElseThrow();
      MotionTrace trace =
          SMALL.follow(
              trim,
              Controls.of(
                  time -> trim.footPressure() + Manners.STEP,
                  (time, v) -> SMALL.heldThrust(trim, v)),
              WaterMotion.STILL,
              MotionModel.Body.FOLLOWS,
              4,
              0.01,
              java.util.Set.of());
      double peak =
          trace.moments().stream()
              .filter(m -> m.time() <= Manners.WITHIN)
              .mapToDouble(m -> Math.abs(m.pitchRate()))
              .max()
              .orElseThrow();
      // A centimetre is not infinitely small: the wings' forces bend by some per cent.
      assertThat(manners.peakPitchRate()).isCloseTo(peak, Offset.offset(0.05 * peak));
      double first = trace.first().immersion();
      double time =
          trace.moments().stream()
              .filter(m -> Math.abs(m.immersion() - first) >= Manners.HEIGHT)
              .mapToDouble(MotionMoment::time)
              .findFirst()
              .orElseThrow();
      assertThat(manners.lockedIn().orElseThrow()).isCloseTo(time, Offset.offset(0.15 * time));
    }
  }

  @Test
  void flatWaterHasNoChopToAnswer() {
    RideCase c = ExampleCase.PLAIN.build();
    RideCase flat =
        new RideCase(
            c.water(),
            c.airDensity(),
            c.headWind(),
            0,
            c.rider(),
            c.setup(),
            c.immersion(),
            c.pullAboveDeck());
    Optional<Manners> manners = MotionModel.small(CaseSolver.of(flat)).findManners(22 * KMH);
    assertThat(manners.orElseThrow().chop()).isEmpty();
  }

  @Test
  void noTrimHasNoManners() {
    assertThat(SMALL.findManners(5 * KMH)).isEmpty();
  }

  @Test
  void chopIsMetFasterThanFeetFollow() {
    for (double speed : SPEEDS) {
      ChopAnswer chop = SMALL.findManners(speed).orElseThrow().chop().orElseThrow();
      assertThat(chop.frequency()).isGreaterThan(ChopAnswer.FOLLOWED);
      assertThat(chop.footCorrection()).isBetween(1e-4, 0.1);
      // The longest wave moves the craft most per metre of its height.
      assertThat(chop.waves().get(0).rise()).isGreaterThan(chop.waves().get(20).rise());
    }
  }

  /** Two tables of other depths, turns and angles: what grows slowly hangs on small differences. */
  @Test
  void tablesOfSmallAndOfLargeMotionsTellTheSame() {
    for (double speed : SPEEDS) {
      Mode small = SMALL.listModes(speed).get(0);
      Mode large = MotionCases.LARGE.listModes(speed).get(0);
      assertThat(small.growth()).isCloseTo(large.growth(), Offset.offset(0.06 * large.growth()));
      assertThat(small.frequency()).isCloseTo(large.frequency(), Offset.offset(0.05));
    }
  }
}
