package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.write.Samples;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;

class VerdictWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 | Ride faster: at 10.0 km/h the wings cannot carry you.",
        "14 | Ride faster: at 14.0 km/h a wing is past its stall.",
        "16 | Ride faster, the stall is only 2.4° away: at 16.0 km/h 6.6° nose-up,",
        "20 | Inside every limit, but more nose-up than you wish: at 20.0 km/h 2.9° nose-up, 32 %",
        "26 | Inside every limit, but more on the front foot than you wish: at 26.0 km/h 0.2°",
        "25.2 | Inside every limit and as you wish: at 25.2 km/h 0.5° nose-up, 59 % on the",
        "35 | Move your feet forward, the weight stands too near one of them:",
        "37 | Change speed, stance or set: at 37.0 km/h your weight would have to stand 58 mm ahead",
        "39 | Ride slower: the drive cannot push you at 39.0 km/h, it would take"
      })
  void saysWhatToDoFirst(double kmh, String start) {
    VerdictWords words =
        VerdictWords.of(Samples.caseFile(), Samples.curve(), Samples.outcomeAt(kmh));
    assertThat(words.first()).startsWith(start);
    assertThat(words.second())
        .isEqualTo("Rideable from 17.0 to 34.0 km/h; even feet at 21.4 and 33.2; level at 26.9.");
  }

  @Test
  void speedsThatDoNotExistAreSaidSo() {
    assertThat(VerdictWords.speeds(Samples.emptyCurve()))
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
