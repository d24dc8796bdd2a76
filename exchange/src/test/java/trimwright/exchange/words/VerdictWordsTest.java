package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

class VerdictWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 | Ride faster: at 10 km/h the wings cannot carry you.",
        "14 | Ride faster: at 14 km/h a wing is past its stall.",
        "16 | Ride faster, the stall is only 2.4° away: at 16 km/h 6.6° nose-up,",
        "22 | Inside every limit, but less on the front foot than you wish: at 22 km/h 1.8°",
        "26 | Inside every limit, but more on the front foot than you wish: at 26 km/h 0.2°",
        "25.2 | Inside every limit and as you wish: at 25.2 km/h 0.5° nose-up, 59 % on the",
        "35 | Move your feet forward, the weight stands too near one of them:",
        "37 | Move both feet at least 60 mm forward, or the mast at least 60 mm back in its track: at",
        "39 | Ride slower: the drive cannot push you at 39 km/h, it would take"
      })
  void saysWhatToDoFirst(double kmh, String start) {
    VerdictWords words =
        VerdictWords.of(
            Samples.caseFile(), Samples.curve(), Samples.outcomeAt(kmh), Measures.METRIC);
    assertThat(words.first()).startsWith(start);
    assertThat(words.second())
        .isEqualTo(
            "Rideable from 17 to 34 km/h; even feet at 21.4 and 33.2; level at 26.9."
                + (kmh < 22.7 ? " " + WaveWords.of(Samples.caseFile(), Measures.METRIC) : ""));
  }

  @Test
  void wavesBeginToCountWhereTheDepthFroudeNumberIsThree() {
    // 3 sqrt(9.80665 m/s² * 0.45 m) = 6.302 m/s
    assertThat(WaveWords.of(Samples.caseFile(), Measures.METRIC))
        .isEqualTo(
            "Below 22.7 km/h the surface makes waves that this model leaves out: read those lines"
                + " with care.");
  }

  @Test
  void feetOutOfReachSayOnWhichSideAndByHowMuch() {
    TrimOutcome.NoTrim ahead = none(NoTrimReason.FEET_CANNOT_REACH, 1.12);
    assertThat(ReasonWords.of(ahead, Measures.METRIC))
        .startsWith("Feet cannot reach: the pressure centre lies 58 mm ahead of your front foot.")
        .contains("Move both feet at least 60 mm forward");
    TrimOutcome.NoTrim behind = none(NoTrimReason.FEET_CANNOT_REACH, -0.25);
    assertThat(ReasonWords.of(behind, Measures.METRIC))
        .contains("120 mm behind your back foot. Move both feet at least 120 mm back");
    assertThat(ReasonWords.brief(behind, Measures.METRIC))
        .isEqualTo("feet cannot reach by 120 mm behind");
    assertThat(
            VerdictWords.of(Samples.caseFile(), Samples.curve(), behind, Measures.METRIC).first())
        .startsWith("Move both feet at least 120 mm back, or the mast at least 120 mm forward");
    assertThat(ReasonWords.of(none(NoTrimReason.THRUST_SHORT, 0.5), Measures.METRIC))
        .isEqualTo("Not enough power: it would take 5227 W at this speed.");
  }

  @Test
  void feetAreNotSentOffTheBoard() {
    FeetCure far = cure(0.35);
    assertThat(far.orders()).isEqualTo("move the mast 350 mm back in its track");
    assertThat(far.warnings()).hasSize(1);
    assertThat(cure(0.3).warnings()).isEmpty();
    assertThat(cure(-0.9).orders()).isEmpty();
  }

  private static FeetCure cure(double shift) {
    return FeetCure.of(Samples.caseFile(), shift, Amounts.of(Measures.METRIC));
  }

  private static TrimOutcome.NoTrim none(NoTrimReason reason, double share) {
    return new TrimOutcome.NoTrim(
        37 * Samples.KMH, reason, Optional.of(Samples.point(37, -2, share)));
  }

  @Test
  void speedsThatDoNotExistAreSaidSo() {
    assertThat(VerdictWords.speeds(Samples.emptyCurve(), Measures.METRIC))
        .isEqualTo("No speed here is inside every limit; even feet nowhere; level nowhere.");
  }

  @Test
  void everyReasonAndLimitHasItsWords() {
    for (NoTrimReason reason : NoTrimReason.values()) {
      assertThat(ReasonWords.of(reason)).endsWith(".").doesNotContain("_");
      assertThat(ReasonWords.brief(reason)).isNotBlank().doesNotContain("_");
    }
    for (Limit limit : Limit.values()) {
      assertThat(ReasonWords.of(limit)).endsWith(".").doesNotContain("_");
      assertThat(ReasonWords.brief(limit)).isNotBlank().doesNotContain("_");
    }
  }
}
