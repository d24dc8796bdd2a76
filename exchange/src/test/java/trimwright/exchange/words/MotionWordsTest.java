package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.MotionSamples;
import trimwright.exchange.write.Samples;
import trimwright.kernel.motion.Hold;

class MotionWordsTest {
  private static List<String> of(MannersAt... points) {
    return MotionWords.of(Samples.caseFile(), List.of(points), Measures.METRIC);
  }

  @Test
  void whatNobodyHoldsIsSaidFirst() {
    List<String> words =
        MotionWords.of(Samples.caseFile(), MotionSamples.manners(), Measures.METRIC);
    assertThat(words.get(0)).isEqualTo("Stay off 18 km/h: there nobody can hold it.");
    assertThat(words.get(1)).startsWith("At 24 km/h keep it there").contains("doubles in 1.4 s");
  }

  @Test
  void speedsThatNobodyHoldsStandAsRanges() {
    assertThat(
            of(
                    MotionSamples.at(20, Hold.NOBODY, 6, Optional.empty()),
                    MotionSamples.at(21, Hold.NOBODY, 6, Optional.empty()),
                    MotionSamples.at(22, Hold.RIDEABLE, 1, Optional.empty()),
                    MotionSamples.at(23, Hold.NOBODY, 6, Optional.empty()))
                .get(0))
        .isEqualTo("Stay off 20 to 21 km/h, 23 km/h: there nobody can hold it.");
  }

  @Test
  void whatStaysIsLeftAlone() {
    List<String> words = of(MotionSamples.at(25, Hold.STEADY, -0.2, Optional.empty()));
    assertThat(words.get(0)).startsWith("At 25 km/h let it run");
    assertThat(words).contains("The case has no chop: flat water.");
    assertThat(words).anyMatch(w -> w.contains("have not changed the height"));
  }

  @Test
  void chopIsFollowedOnlyWhereFeetCan() {
    assertThat(of(MotionSamples.at(25, Hold.STEADY, -1, Optional.of(MotionSamples.chop(0.8)))))
        .anyMatch(w -> w.startsWith("Ride the chop with your feet"));
    assertThat(of(MotionSamples.at(25, Hold.STEADY, -1, Optional.of(MotionSamples.chop(2)))))
        .anyMatch(w -> w.startsWith("Do not chase the chop"));
  }

  @Test
  void withoutAFlightThereIsOneSentence() {
    assertThat(of()).singleElement().asString().startsWith("Choose other speeds");
  }

  @ParameterizedTest
  @EnumSource(Measures.class)
  void nothingIsCalledSafe(Measures measures) {
    List<String> all =
        new ArrayList<>(MotionWords.of(Samples.caseFile(), MotionSamples.manners(), measures));
    all.addAll(FallWords.of(Samples.caseFile(), MotionSamples.outside(), measures));
    all.addAll(FallWords.of(Samples.caseFile(), MotionSamples.inside(), measures));
    all.addAll(FallWords.of(Samples.caseFile(), MotionSamples.nothing(), measures));
    assertThat(all)
        .allSatisfy(w -> assertThat(w.replace("not that it is safe", "")).doesNotContain("safe"))
        .allSatisfy(w -> assertThat(w).matches("[A-Z].*\\.").doesNotContain("NaN", "Infinity"));
    if (measures == Measures.IMPERIAL) {
      assertThat(all).allSatisfy(w -> assertThat(w).doesNotContain("km/h", " mm"));
    }
  }

  @Test
  void theInstructorComesFirstAndThenWhatToDo() {
    List<String> none = FallWords.of(Samples.caseFile(), MotionSamples.outside(), Measures.METRIC);
    assertThat(none.get(0)).isEqualTo(CautionWords.first());
    assertThat(none.get(1))
        .startsWith("Do not give this setup to somebody who flies for the first");
    List<String> capped = FallWords.of(Samples.caseFile(), MotionSamples.inside(), Measures.METRIC);
    assertThat(capped.get(0)).isEqualTo(CautionWords.first());
    assertThat(capped.get(1))
        .startsWith(
            "Standing: set the remote to a speed of at most 20 km/h, a throttle ramp of at least"
                + " 1.50 s and at most 1800 W;");
    assertThat(capped.get(2)).startsWith("Kneeling: as the remote is");
    assertThat(capped.get(3)).startsWith("Prone: no cap brings it inside. Nearest");
  }

  @Test
  void aMissingRampIsSaid() {
    assertThat(FallWords.of(Samples.caseFile(), MotionSamples.outside(), Measures.METRIC))
        .anyMatch(w -> w.startsWith("Find out how quickly the remote lets go"));
    assertThat(FallWords.of(Samples.caseFile(), MotionSamples.inside(), Measures.METRIC))
        .anyMatch(w -> w.equals("The throttle goes in 0.80 s, as the case says."));
  }
}
