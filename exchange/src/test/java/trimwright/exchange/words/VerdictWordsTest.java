package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.band.Bands;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

class VerdictWordsTest {

  private static final String WINDOW = "; rideable from 17 to 34 km/h.";

  private static VerdictWords verdict(double kmh) {
    CaseFile caseFile = Samples.caseFile();
    TrimOutcome at = Samples.outcomeAt(kmh);
    CauseOutcome cause =
        at instanceof TrimOutcome.NoTrim none
            ? new CauseOutcome.NoSplit(
                Optional.of(none),
                Optional.empty(),
                kmh < 15 ? OptionalDouble.of(14.6 * Samples.KMH) : OptionalDouble.empty())
            : Samples.split(caseFile, at.findPoint().orElseThrow(), Samples.pointAt(25));
    return VerdictWords.of(
        caseFile,
        Samples.curve(),
        at,
        CauseWords.of(caseFile, cause, Measures.METRIC),
        Measures.METRIC);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "10 | Ride 15 km/h or more: at 10 km/h the wings cannot carry you.",
        "14 | Ride 15 km/h or more: at 14 km/h a wing is past its stall.",
        "16 | Ride 9 km/h faster: the stall is only 2.4° away.",
        "19 | Ride 6 km/h faster and the deck settles at 0.6° nose-up.",
        "25 | Change nothing: 0.6° nose-up is small, and few riders feel it.",
        "26 | Ride 1 km/h slower for your feet: the deck's angle can stay.",
        "35 | Ride 10 km/h slower: the weight stands too near one foot.",
        "37 | Ride 12 km/h slower, or move both feet at least 60 mm forward.",
        "39 | Ride 14 km/h slower: at 39 km/h the drive cannot push you."
      })
  void firstLineSaysWhatToDo(double kmh, String first) {
    assertThat(verdict(kmh).first()).isEqualTo(first);
  }

  @Test
  void secondLineHasTheNumbers() {
    assertThat(verdict(22).second())
        .isEqualTo("22 km/h: 1.8° nose-up, 45 % on the front foot" + WINDOW);
    assertThat(verdict(37).second())
        .isEqualTo("37 km/h: pressure centre 58 mm ahead of your front foot" + WINDOW);
    assertThat(verdict(39).second())
        .isEqualTo("39 km/h: takes 5905 W, the drive has 5000 W" + WINDOW);
    assertThat(verdict(10).second())
        .isEqualTo("Rideable from 17 to 34 km/h; even feet at 21.4 and 33.2; level at 26.9.");
  }

  @Test
  void aBrokenLimitComesBeforeAWishThatCannotBe() {
    CaseFile caseFile = Samples.caseFile();
    CauseWords cause =
        CauseWords.of(
            caseFile, Samples.noSplit(39, true, NoTrimReason.THRUST_SHORT), Measures.METRIC);
    assertThat(first(caseFile, 16, cause)).isEqualTo("Ride faster: the stall is only 2.4° away.");
    assertThat(first(caseFile, 35, cause))
        .isEqualTo("Move your feet forward: the weight stands too near one foot.");
    assertThat(first(caseFile, 22, cause))
        .isEqualTo("Wish for less speed: at 39 km/h the drive cannot push you.");
  }

  private static String first(CaseFile caseFile, double kmh, CauseWords cause) {
    return VerdictWords.of(
            caseFile, Samples.curve(), Samples.outcomeAt(kmh), cause, Measures.METRIC)
        .first();
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
        .isEqualTo("No speed inside every limit; even feet nowhere; level nowhere.");
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

  @Test
  void withItsBandsAPitchThatCannotBeToldFromLevelIsCalledLevel() {
    Bands bands = Samples.bands(Samples.curve());
    assertThat(VerdictWords.sure(bands, 15, Measures.METRIC))
        .contains(
            "25 km/h: level within ±1.0°, 58 ±9 % on the front foot; rideable from 17 to 34"
                + " km/h.");
    assertThat(VerdictWords.sure(bands, 10, Measures.IMPERIAL).orElseThrow())
        .startsWith("12.4 mph: 2.9 ±1.0° nose-up, 32 ±9 % on the front foot; ")
        .endsWith(" mph.");
    assertThat(VerdictWords.sure(bands, 0, Measures.METRIC)).isEmpty();
  }

  @Test
  void theSpeedsThatMatterCarryTheirBands() {
    assertThat(VerdictWords.speeds(Samples.bands(Samples.curve()), Measures.METRIC))
        .isEqualTo(
            "Rideable from 17 ±2 to 34 km/h; even feet at 21.4 and 33.2 ±2; level at 26.9 ±2.");
    assertThat(VerdictWords.speeds(Bands.without(Samples.curve()), Measures.METRIC))
        .isEqualTo(VerdictWords.speeds(Samples.curve(), Measures.METRIC));
  }
}
