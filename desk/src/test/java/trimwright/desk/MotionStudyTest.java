package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.words.FallAnswer;
import trimwright.exchange.words.MannersAt;
import trimwright.exchange.words.RampSource;
import trimwright.kernel.fall.FallCaps;
import trimwright.kernel.hull.Posture;

class MotionStudyTest {
  private static final CaseFile CASE =
      CaseReader.read(DemoCases.find("light-carver").orElseThrow().text(), SectionFiles.NONE)
          .findValue()
          .orElseThrow();

  private static final FallAnswer FALLS =
      FallsStudy.find(CASE, OptionalDouble.empty(), OptionalDouble.empty(), () -> false)
          .orElseThrow();

  @Test
  void mannersAreThereWhereATrimIs() {
    List<MannersAt> points =
        MotionStudy.find(CASE, SpeedRange.kmh(8, 28, 10), () -> false).orElseThrow();
    assertThat(points).hasSize(3);
    assertThat(points)
        .allSatisfy(
            p ->
                assertThat(p.manners().isPresent()).isEqualTo(p.outcome().findPoint().isPresent()));
    assertThat(points.get(0).manners()).isEmpty();
    assertThat(points.get(2).manners().orElseThrow().speed())
        .isEqualTo(points.get(2).outcome().speed());
  }

  @Test
  void whoeverAsksMayCallItOff() {
    assertThat(MotionStudy.find(CASE, SpeedRange.kmh(20, 30, 5), () -> true)).isEmpty();
    assertThat(FallsStudy.find(CASE, OptionalDouble.empty(), OptionalDouble.empty(), () -> true))
        .isEmpty();
  }

  @Test
  void whatComesNearestIsNoFasterThanWishedAndAsGentleAsCanBe() {
    for (Posture posture : Posture.values()) {
      assertThat(FALLS.study().findCaps(posture)).isEmpty();
      FallAnswer.Nearest nearest = FALLS.findNearest(posture).orElseThrow();
      assertThat(nearest.point().speed())
          .isLessThanOrEqualTo(CASE.rideCase().rider().wishedSpeed());
      assertThat(nearest.drive().ramp()).isEqualTo(FallCaps.SLOWEST_RAMP);
      assertThat(nearest.point().inside(CASE.rideCase().limits())).isFalse();
    }
  }

  @Test
  void whoSaysTheRampIsTold() {
    assertThat(FALLS.ramp()).isEqualTo(RampSource.USUAL);
    FallAnswer asked =
        FallsStudy.find(CASE, OptionalDouble.of(1.2), OptionalDouble.of(900), () -> false)
            .orElseThrow();
    assertThat(asked.ramp()).isEqualTo(RampSource.ASKED);
    assertThat(asked.study().drive().ramp()).isEqualTo(1.2);
    assertThat(asked.nearest())
        .allSatisfy(n -> assertThat(n.drive().mostPower().orElseThrow()).isLessThanOrEqualTo(900));
  }
}
