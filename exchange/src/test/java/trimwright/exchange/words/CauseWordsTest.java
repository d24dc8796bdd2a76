package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.seed.RunSeed;

class CauseWordsTest {

  private static CauseWords words(double ridden, double wished, double share) {
    CaseFile caseFile = Samples.caseFile();
    return CauseWords.of(
        caseFile,
        Samples.split(caseFile, Samples.point(18, ridden, 0.3), Samples.point(25, wished, share)),
        Measures.METRIC);
  }

  private static CauseWords words(TrimPoint ridden, TrimPoint wished) {
    CaseFile caseFile = Samples.caseFile();
    return CauseWords.of(caseFile, Samples.split(caseFile, ridden, wished), Measures.METRIC);
  }

  private static String all(CauseWords words) {
    return words.headline() + " " + String.join(" ", words.sentences());
  }

  @Test
  void speedIsNamedFirstWhereSpeedIsTheCause() {
    CauseWords words = words(4.4, 0.2, 0.55);
    assertThat(words.headline())
        .isEqualTo("Ride 7 km/h faster: 4.2° nose-up is speed, next to nothing the set.");
    assertThat(all(words))
        .contains("At 25 km/h the deck settles at 0.2° nose-up")
        .doesNotContain("wedge");
    assertThat(all(words(4.4, 0, 0.55))).contains("the deck settles level.");
  }

  @Test
  void setIsNamedFirstWhereTheSetIsTheCause() {
    CauseWords words = words(4.2, 3.9, 0.55);
    assertThat(words.headline()).isEqualTo("Change the set, not the speed: it makes 3.9° nose-up.");
    assertThat(words.order())
        .hasValue(
            "Fit a 4° wedge under the mast's base, thick end to the back, or a larger front wing.");
    assertThat(all(words)).contains("so the feet are right");
  }

  @Test
  void noseDownSetTurnsTheWedgeRound() {
    CauseWords words = words(-4, -3, 0.55);
    assertThat(words.headline())
        .isEqualTo("Change the set before the speed: it makes 3.0° nose-down.");
    assertThat(words.order())
        .hasValue(
            "Fit a 3° wedge under the mast's base, thick end to the front, or a smaller front wing.");
  }

  @Test
  void movingFeetAndChangingGearAreOneMismatchWithTwoCures() {
    String tooMuchFront = all(words(0.2, 0.1, 0.80));
    assertThat(tooMuchFront)
        .contains(
            "Move both feet 120 mm forward, or the mast 120 mm back in its track, or turn the"
                + " stabilizer's leading edge up")
        .contains("cures for one mismatch")
        .contains("thick end of the added wedge goes to the front")
        .contains("takes thread away from the bolts");
    String tooLittleFront = all(words(0.2, 0.1, 0.30));
    assertThat(tooLittleFront)
        .contains(
            "Move both feet 120 mm back, or the mast 120 mm forward in its track, or turn the"
                + " stabilizer's leading edge down")
        .contains("thick end of the added wedge goes to the back");
  }

  @Test
  void cancellingPartsAreNotSoldAsFine() {
    assertThat(words(0.1, -3.5, 0.55).headline()).contains("the two cancel at 18 km/h");
  }

  @Test
  void fasterIsNotAdvisedWhereItMakesThingsWorse() {
    CauseWords words = words(2, -3, 0.55);
    assertThat(words.headline())
        .isEqualTo("Change the set before the speed: 18 km/h more than hides its 3.0° nose-down.");
    assertThat(words.order())
        .hasValue(
            "Fit a 3° wedge under the mast's base, thick end to the front, then ride 7 km/h faster.");
    assertThat(all(words)).doesNotContain("Ride 7 km/h faster");
    assertThat(words(Samples.point(30, 2, 0.55), Samples.point(25, 3, 0.55)).headline())
        .isEqualTo("Change the set before the speed: 30 km/h hides a part of its 3.0° nose-up.");
  }

  @Test
  void nothingToChangeIsSaidSo() {
    CauseWords words = words(Samples.point(18, 0.2, 0.55), Samples.point(25, 0.1, 0.55));
    assertThat(words.headline()).startsWith("Change nothing");
    CauseWords right = words(Samples.point(25, 0, 0.55), Samples.point(25, 0, 0.55));
    assertThat(all(right)).contains("the set is right.").containsOnlyOnce("at 25 km/h;");
  }

  @Test
  void theLargerComplaintLeads() {
    CauseWords words = words(Samples.point(25, 0.7, 0.37), Samples.point(25, 0.7, 0.37));
    assertThat(words.headline())
        .isEqualTo(
            "Move both feet 85 mm back: the front foot carries 37 % at 25 km/h, you want 55 %.");
    assertThat(words.order())
        .hasValue("Move both feet 85 mm back, or the mast 85 mm forward in its track.");
    assertThat(all(words))
        .contains("0.7° nose-up is small: few riders feel it")
        .doesNotContain("under the mast's base");
    assertThat(words(Samples.point(18, 0.1, 0.3), Samples.point(25, 0.1, 0.55)).headline())
        .isEqualTo("Ride 7 km/h faster for your feet: the deck's angle can stay.");
  }

  @Test
  void aSpeedThatMakesTheFeetWorseIsSaidSo() {
    CauseWords words = words(Samples.point(18, 6, 0.5), Samples.point(25, 0.2, 0.4));
    assertThat(words.headline()).startsWith("Ride 7 km/h faster, then see to your feet: 5.8°");
    assertThat(words.order()).hasValue("Ride 7 km/h faster, then move both feet 70 mm back.");
    assertThat(all(words)).contains("Riding faster makes the feet worse.");
  }

  @Test
  void aWingNearItsStallGetsNoWedge() {
    TrimPoint near = Samples.point(25, 11.2, 0.55, Limit.STALL_MARGIN, Limit.PITCH);
    CauseWords words = words(near, near);
    assertThat(words.headline())
        .isEqualTo(
            "Ride faster or take a larger front wing: at 25 km/h the wing is near its stall.");
    assertThat(words(Samples.point(30, 8, 0.55), near).headline())
        .startsWith("Wish for more speed, or take a larger front wing: at 25 km/h");
    assertThat(words.sentences().get(0))
        .isEqualTo(
            "At 25 km/h this is outside the limits. Too near the stall. The deck is tilted too"
                + " far.");
    assertThat(all(words)).contains("No wedge for that").doesNotContain("° wedge");
  }

  @Test
  void aWedgeIsOfferedOnlyWhereItMayBeFitted() {
    assertThat(words(5.2, 5.1, 0.55).order()).hasValue("Fit a larger front wing.");
    assertThat(all(words(5.2, 5.1, 0.55))).contains("5.1° nose-up is more than the 5°");
    TrimPoint point = Samples.point(25, 4, 0.55);
    assertThat(new WedgeWords(Math.toRadians(-6), point, new BigDecimal("4.0"), true).order())
        .startsWith("a 4° wedge");
    WedgeWords outside = new WedgeWords(Math.toRadians(-7), point, new BigDecimal("4.0"), true);
    assertThat(outside.order()).isEqualTo("a larger front wing");
    assertThat(outside.sentence()).contains("the mast's base would stand at -11.0°");
  }

  @Test
  void anUnstableFoilIsNamedAsSuch() {
    TrimPoint unstable = Samples.point(25, 3, 0.55, Limit.STATIC_MARGIN);
    CauseWords words = words(Samples.point(18, 5, 0.55), unstable);
    assertThat(words.headline()).contains("the foil by itself is unstable");
    assertThat(words.sentences().get(0)).startsWith("At 25 km/h").contains("foil by itself");
  }

  @Test
  void aMeasurementFarOffSoftensTheOrders() {
    CaseFile caseFile = Samples.measured(6.5);
    CauseWords words =
        CauseWords.of(
            caseFile,
            Samples.split(caseFile, Samples.point(18, 4, 0.55), Samples.point(25, 0, 0.55)),
            Measures.METRIC);
    assertThat(words.headline()).startsWith("Check the list first: 2.5°");
    assertThat(all(words)).contains("it holds only if the list is clean");
  }

  @Test
  void aLogThatDisagreesSendsToTheListFirst() {
    CaseFile caseFile = Samples.measured(9);
    CauseWords words =
        CauseWords.of(
            caseFile,
            Samples.split(caseFile, Samples.point(18, 3, 0.5), Samples.point(25, 1, 0.55)),
            Measures.METRIC);
    assertThat(words.headline())
        .isEqualTo("Check the list first: 6.0° of what you measured is neither speed nor set.");
    assertThat(all(words)).contains("You measured 9.0° nose-up: 6.0° more nose-up than computed");
  }

  @Test
  void plainFaultsComeInTheOrderOfTheTrade() {
    assertThat(RuleOut.listFor(Samples.caseFile()))
        .extracting(RuleOut::what)
        .containsExactly(
            "A loose bolt",
            "The shim the wrong way round",
            "The stabilizer upside down",
            "Weed",
            "A nick",
            "The battery in the wrong place");
  }

  @Test
  void nothingIsRuledOutThatTheCaseDoesNotHave() {
    List<RuleOut> list =
        RuleOut.listFor(Samples.caseFile(0.75, 0.85, false, 0, OptionalDouble.empty()));
    assertThat(list)
        .extracting(RuleOut::what)
        .containsExactly("A loose bolt", "The stabilizer upside down", "Weed", "A nick");
    assertThat(list.toString()).doesNotContain("propeller", "battery", "shim");
  }

  @ParameterizedTest
  @EnumSource(NoTrimReason.class)
  void missingSplitSaysWhichSpeedAndWhy(NoTrimReason reason) {
    for (boolean wished : new boolean[] {true, false}) {
      CauseOutcome.NoSplit none = Samples.noSplit(12, wished, reason);
      CauseWords words = CauseWords.of(Samples.caseFile(), none, Measures.METRIC);
      if (wished || reason != NoTrimReason.FEET_CANNOT_REACH) {
        assertThat(words.headline()).contains("t 12 km/h");
      }
      assertThat(words.sentences().get(0))
          .contains("12 km/h")
          .contains(wished ? "your wished speed" : "you ride")
          .containsIgnoringCase(ReasonWords.of(none.first(), Measures.METRIC).split("[.]")[0]);
    }
  }

  @Test
  void bothSpeedsWithoutTrimAreNamedWithTheirFigures() {
    CauseWords words = CauseWords.of(Samples.caseFile(), Samples.bothFail(), Measures.METRIC);
    assertThat(words.headline())
        .isEqualTo("Wish for less speed: at 39 km/h the drive cannot push you.");
    assertThat(words.sentences().get(0))
        .startsWith("At your wished speed of 39 km/h there is no trim. Not enough power:")
        .containsPattern("would take [0-9]+ W")
        .endsWith("The drive has 5000 W.");
    assertThat(words.sentences().get(1)).startsWith("At the 12 km/h you ride there is no trim.");
    assertThat(words.sentences().get(2)).startsWith("It flies from 14 km/h on");
  }

  @Test
  void aSpeedWithoutTrimSaysWhatToDo() {
    assertThat(none(12, false, NoTrimReason.TOO_SLOW).headline())
        .isEqualTo("Ride 14 km/h or more: at 12 km/h the wings cannot carry you.");
    assertThat(none(12, true, NoTrimReason.STALLED).headline())
        .isEqualTo("Wish for 14 km/h or more: at 12 km/h a wing is past its stall.");
    assertThat(none(33, false, NoTrimReason.THRUST_SHORT).order())
        .hasValue("Ride 8 km/h slower: at 33 km/h the drive cannot push you.");
    assertThat(none(12, false, NoTrimReason.FEET_CANNOT_REACH).order())
        .hasValue("Ride 13 km/h faster, or move both feet at least 60 mm forward.");
    assertThat(none(12, true, NoTrimReason.FEET_CANNOT_REACH).headline())
        .isEqualTo("Move both feet at least 60 mm forward: at 12 km/h your feet cannot reach.");
    assertThat(none(12, true, NoTrimReason.TOO_SLOW).order()).isEmpty();
  }

  private static CauseWords none(double kmh, boolean wished, NoTrimReason reason) {
    return CauseWords.of(Samples.caseFile(), Samples.noSplit(kmh, wished, reason), Measures.METRIC);
  }

  @Test
  void aCraftThatNeedsPressingDownIsNotSentFaster() {
    assertThat(pressedDown(TrimOutcome.Excess.REST).order())
        .hasValue(
            "Check masses, volumes, wind and pull: at 12 km/h it is pushed up without its wings.");
    assertThat(all(pressedDown(TrimOutcome.Excess.REST)))
        .contains("Pushed up:")
        .doesNotContain("stall", "faster", "It flies");
    assertThat(pressedDown(TrimOutcome.Excess.WINGS).order())
        .hasValue("Ride slower: at 12 km/h the wings lift more than the weight.");
    assertThat(all(pressedDown(TrimOutcome.Excess.WINGS)))
        .contains("Too much lift:")
        .doesNotContain("stall", "faster", "It flies");
  }

  private static CauseWords pressedDown(TrimOutcome.Excess excess) {
    TrimOutcome.NoTrim up =
        new TrimOutcome.NoTrim(
            12 * Samples.KMH, NoTrimReason.STALLED, Optional.empty(), Optional.of(excess));
    return CauseWords.of(
        Samples.caseFile(),
        new CauseOutcome.NoSplit(Optional.of(up), Optional.empty(), OptionalDouble.empty()),
        Measures.METRIC);
  }

  @Test
  void feetOutOfReachLearnHowFarTheirWishIs() {
    List<String> sentences =
        CauseWords.of(
                Samples.caseFile(),
                Samples.noSplit(25, true, NoTrimReason.FEET_CANNOT_REACH),
                Measures.METRIC)
            .sentences();
    // 0.12 of the stance of 480 mm to reach it, and 0.45 of it more for 55 %.
    assertThat(sentences)
        .containsExactly(
            "At your wished speed of 25 km/h your feet cannot reach: the pressure centre lies 58"
                + " mm ahead of your front foot. To reach it, move both feet at least 60 mm"
                + " forward, or the mast at least 60 mm back in its track. For the 55 % on the"
                + " front foot that you want, move both feet 275 mm forward, or the mast 275 mm"
                + " back in its track.");
  }

  @Test
  void aShimThatWorksAgainstTheCureComesOutFirst() {
    assertThat(all(words(0.2, 0.1, 0.30))).contains("Take that shim out first");
    assertThat(all(words(0.2, 0.1, 0.80))).doesNotContain("Take that shim out first");
  }

  @Test
  void whyFollowsTheOrderWithoutSayingItAgain() {
    assertThat(words(4.4, 0.2, 0.55).why())
        .isEqualTo("4.2° nose-up is speed, 0.2° nose-up the set.");
    assertThat(words(4.4, 0, 0.55).why()).isEqualTo("4.4° nose-up is speed, and the set is right.");
    assertThat(words(3, 3, 0.55).why()).isEqualTo("3.0° nose-up is the set, none of it speed.");
    assertThat(words(Samples.point(25, 0.7, 0.37), Samples.point(25, 0.7, 0.37)).why())
        .isEqualTo("The front foot carries 37 % at 25 km/h, you want 55 %.");
    assertThat(none(12, false, NoTrimReason.TOO_SLOW).why()).isEqualTo("It flies from 14 km/h on.");
    assertThat(none(12, false, NoTrimReason.FEET_CANNOT_REACH).why())
        .isEqualTo("The pressure centre lies 58 mm ahead of your front foot.");
    assertThat(none(39, true, NoTrimReason.THRUST_SHORT).why())
        .isEqualTo("There is no trim at your wished 39 km/h: the drive cannot push you.");
  }

  @Property(tries = 300, seed = RunSeed.VALUE)
  void neverCallsAnythingSafeAndNeverFails(
      @ForAll @DoubleRange(min = -20, max = 20) double ridden,
      @ForAll @DoubleRange(min = -20, max = 20) double wished,
      @ForAll @DoubleRange(min = -1, max = 2) double share) {
    assertThat(all(words(ridden, wished, share)).toLowerCase(Locale.ROOT))
        .doesNotContain("safe")
        .doesNotContainPattern("(?<![0-9])0\\.0°")
        .doesNotContain("--");
  }
}
