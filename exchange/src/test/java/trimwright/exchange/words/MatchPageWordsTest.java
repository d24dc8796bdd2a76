package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;

class MatchPageWordsTest {
  private static CaseFile carver() {
    String text = DemoCases.find("light-carver").orElseThrow().text();
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(RidingKind.class)
  void everyWishSaysWhyAndFromWhereOnItIsPoor(RidingKind kind) {
    for (Wish wish : Wish.values()) {
      assertThat(WishReasons.why(wish)).endsWith(".");
      for (Measures measures : Measures.values()) {
        assertThat(WishReasons.poor(wish, Wishes.of(kind).grade(wish), measures))
            .containsPattern("\\d")
            .doesNotContain("none", "Infinity");
      }
    }
  }

  @Test
  void poorLiesBeyondGoodOnItsOwnSide() {
    Wishes wishes = Wishes.of(RidingKind.CARVING);
    assertThat(WishReasons.poor(Wish.LEVEL, wishes.grade(Wish.LEVEL), Measures.METRIC))
        .isEqualTo("from 3.0° on");
    assertThat(WishReasons.poor(Wish.TURN, wishes.grade(Wish.TURN), Measures.METRIC))
        .isEqualTo("35° and less");
  }

  @Test
  void weightsHaveWords() {
    assertThat(WishReasons.weight(0)).isEqualTo("not at all");
    assertThat(WishReasons.weight(Wishes.MOST_WEIGHT)).isEqualTo("most");
  }

  @Test
  void aRiderIsToldInALine() {
    assertThat(RiderWords.of(carver(), RidingKind.CARVING, Measures.METRIC))
        .isEqualTo("58 kg and 4 kg of kit; carving; wishes 29.0 km/h with 55 % on the front foot.");
    assertThat(RiderWords.of(carver(), RidingKind.CARVING, Measures.IMPERIAL))
        .contains("lb", "mph");
  }

  @Test
  void progressNeverGoesBackFromOneStageToTheNext() {
    double before = -1;
    MatchProgressWords[] way = {
      MatchProgressWords.NONE,
      new MatchProgressWords(1, 1160, 0, 0, 0, 0),
      new MatchProgressWords(1160, 1160, 0, 0, 0, 0),
      new MatchProgressWords(1160, 1160, 12, 32, 0, 0),
      new MatchProgressWords(1160, 1160, 12, 32, 1, 8),
      new MatchProgressWords(1160, 1160, 12, 32, 8, 8)
    };
    for (MatchProgressWords at : way) {
      assertThat(at.share()).isGreaterThan(before).isLessThanOrEqualTo(1);
      before = at.share();
    }
    assertThat(way[0].text()).isNotBlank();
    assertThat(way[3].text())
        .isEqualTo("all 1,160 pairs of wings; 12 of at most 32 setups confirmed");
  }
}
