package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.write.Samples;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.seed.RunSeed;

/** The same advice in either family of measures, each in its own units alone. */
class MeasuresInWordsTest {
  private static final Pattern METRIC =
      Pattern.compile("[0-9] ?(km/h|kmh|mm|cm²?|m|kg|N|°C)(?![\\p{L}/])");
  private static final Pattern IMPERIAL =
      Pattern.compile("[0-9] ?(mph|in(?= |[.,;:)])|lbf?|ft)(?![\\p{L}/])");

  /** A quarter of an inch, the coarser of the two families' steps, and some [m]. */
  private static final double STEPS_APART = 0.007;

  /** Of the sample's rider [m]. */
  private static final double STANCE = 0.48;

  /** Two lines of letters of 16 px on a screen of 390 px. */
  private static final int LONGEST = 92;

  private static final String NOSE = "([0-9.]+)° (nose-up|nose-down)";

  static List<DemoCase> demos() {
    return DemoCases.list();
  }

  /** All that is said of a case at a speed. */
  private static List<String> words(
      CaseFile caseFile, Curve curve, TrimOutcome at, CauseOutcome cause, Measures measures) {
    List<String> all = new ArrayList<>();
    CauseWords words = CauseWords.of(caseFile, cause, measures);
    VerdictWords verdict = VerdictWords.of(caseFile, curve, at, words, measures);
    all.add(verdict.first());
    all.add(verdict.second());
    all.add(words.headline());
    all.add(words.why());
    all.addAll(words.sentences());
    words.ruleOutFirst().forEach(item -> all.add(item.what() + ". " + item.how()));
    if (at instanceof TrimOutcome.NoTrim none) {
      all.add(ReasonWords.of(none, measures));
      all.add(ReasonWords.brief(none, measures));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everySentenceSpeaksOneFamilyAndItsPartsAddUp(DemoCase demo) {
    CaseFile caseFile = CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow();
    CaseSolver solver = CaseSolver.of(caseFile.rideCase());
    List<Double> speeds = new ArrayList<>();
    for (int mph = 6; mph <= 25; mph++) {
      speeds.add(Unit.MILE_PER_HOUR.toSi(mph));
    }
    for (int kmh = 10; kmh <= 40; kmh += 3) {
      speeds.add(Unit.KILOMETRE_PER_HOUR.toSi(kmh));
    }
    speeds.sort(null);
    Curve curve = solver.curve(speeds);
    int splits = 0;
    for (double speed : speeds) {
      TrimOutcome at = solver.trim(speed);
      CauseOutcome cause = CauseSplit.of(solver, speed, caseFile.notes().measuredPitch());
      List<String> metric = words(caseFile, curve, at, cause, Measures.METRIC);
      List<String> imperial = words(caseFile, curve, at, cause, Measures.IMPERIAL);
      for (List<String> all : List.of(metric, imperial)) {
        // The verdict's two lines and the cause's headline stay on top of a phone.
        assertThat(all.subList(0, 4)).allMatch(line -> line.length() <= LONGEST);
      }
      assertThat(metric).noneMatch(sentence -> IMPERIAL.matcher(sentence).find());
      assertThat(imperial).noneMatch(sentence -> METRIC.matcher(sentence).find());
      if (cause instanceof CauseOutcome.Split) {
        splits++;
        assertPartsAddUp(String.join(" ", metric), "km/h");
        assertPartsAddUp(String.join(" ", imperial), "mph");
      }
    }
    assertThat(splits).isGreaterThan(10);
  }

  /** Degrees and speeds, as a person would add them up on paper. */
  private static void assertPartsAddUp(String text, String unit) {
    Matcher whole =
        Pattern.compile(
                "At ([0-9.]+) "
                    + unit
                    + " the deck rides (level|"
                    + NOSE
                    + "); you want it (level|"
                    + NOSE
                    + ")\\.")
            .matcher(text);
    assertThat(whole.find()).as(text).isTrue();
    BigDecimal wanted = signed(whole.group(6), whole.group(7));
    BigDecimal gap = signed(whole.group(3), whole.group(4)).subtract(wanted);
    Matcher set = Pattern.compile("the set (is right|makes " + NOSE + ")").matcher(text);
    assertThat(set.find()).as(text).isTrue();
    BigDecimal setPart = signed(set.group(2), set.group(3));
    Matcher pace =
        Pattern.compile(
                "Riding ([0-9.]+) "
                    + unit
                    + " (slower|faster) than you wish (changes nothing|makes "
                    + NOSE
                    + ")")
            .matcher(text);
    if (!pace.find()) {
      assertThat(setPart).isEqualByComparingTo(gap);
      return;
    }
    assertThat(signed(pace.group(4), pace.group(5)).add(setPart)).isEqualByComparingTo(gap);
    Matcher feet =
        Pattern.compile("Feet: .* at ([0-9.]+) " + unit + " and .* at ([0-9.]+) " + unit + ";")
            .matcher(text);
    assertThat(feet.find()).as(text).isTrue();
    BigDecimal faster = new BigDecimal(feet.group(2)).subtract(new BigDecimal(feet.group(1)));
    assertThat(faster.abs()).isEqualByComparingTo(new BigDecimal(pace.group(1)));
    assertThat(faster.signum() > 0).isEqualTo(pace.group(2).equals("slower"));
  }

  private static BigDecimal signed(String number, String direction) {
    if (number == null) {
      return BigDecimal.ZERO;
    }
    BigDecimal size = new BigDecimal(number);
    return direction.equals("nose-up") ? size : size.negate();
  }

  @Property(tries = 300, seed = RunSeed.VALUE)
  void bothFamiliesAdviseTheSameWay(
      @ForAll @DoubleRange(min = 10, max = 24) double riddenKmh,
      @ForAll @DoubleRange(min = -12, max = 12) double ridden,
      @ForAll @DoubleRange(min = -12, max = 12) double wished,
      @ForAll @DoubleRange(min = -1, max = 2) double riddenShare,
      @ForAll @DoubleRange(min = -1, max = 2) double share) {
    CaseFile caseFile = Samples.caseFile();
    assumeNoMoveJustFits((share - caseFile.rideCase().rider().wishedFootShare()) * STANCE);
    CauseOutcome cause =
        Samples.split(
            caseFile,
            Samples.point(riddenKmh, ridden, riddenShare),
            Samples.point(25, wished, share));
    TrimOutcome at = new TrimOutcome.Trimmed(Samples.point(riddenKmh, ridden, riddenShare));
    List<String> metric = words(caseFile, Samples.curve(), at, cause, Measures.METRIC);
    List<String> imperial = words(caseFile, Samples.curve(), at, cause, Measures.IMPERIAL);
    assertThat(imperial).noneMatch(sentence -> METRIC.matcher(sentence).find());
    assertThat(metric.stream().map(MeasuresInWordsTest::withoutAmounts))
        .isEqualTo(imperial.stream().map(MeasuresInWordsTest::withoutAmounts).toList());
  }

  @Property(tries = 200, seed = RunSeed.VALUE)
  void bothFamiliesReachTheFeetTheSameWay(
      @ForAll @DoubleRange(min = -0.9, max = 1.5) double share) {
    Assume.that(share < 0 || share > 1);
    CaseFile caseFile = Samples.caseFile();
    assumeNoMoveJustFits((share - caseFile.rideCase().rider().wishedFootShare()) * STANCE);
    assumeNoMoveJustFits((share < 0 ? share : share - 1) * STANCE);
    TrimOutcome.NoTrim none =
        new TrimOutcome.NoTrim(
            7, NoTrimReason.FEET_CANNOT_REACH, Optional.of(Samples.point(25, 1, share)));
    CauseOutcome cause =
        new CauseOutcome.NoSplit(Optional.of(none), Optional.empty(), OptionalDouble.empty());
    List<String> metric = words(caseFile, Samples.curve(), none, cause, Measures.METRIC);
    List<String> imperial = words(caseFile, Samples.curve(), none, cause, Measures.IMPERIAL);
    assertThat(imperial).noneMatch(sentence -> METRIC.matcher(sentence).find());
    assertThat(metric.stream().map(MeasuresInWordsTest::withoutAmounts))
        .isEqualTo(imperial.stream().map(MeasuresInWordsTest::withoutAmounts).toList());
  }

  /** Where an advised move just fits or just does not, the steps of the families may differ. */
  private static void assumeNoMoveJustFits(double shift) {
    for (double end : new double[] {0.315, -0.755, 0.4, -0.4}) {
      Assume.that(Math.abs(shift - end) > STEPS_APART);
    }
  }

  private static String withoutAmounts(String sentence) {
    return sentence
        .replaceAll("[0-9.]+ (mm|in)(?=[ ,.;:)])", "(length)")
        .replaceAll("[0-9.]+ (kg|lb)(?=[ ,.;:)])", "(mass)")
        .replaceAll("[0-9.]+ (km/h|mph)", "(speed)")
        .replaceAll("(from|at|and) [0-9.]+[0-9](?=[ ;.])", "$1 (speed)");
  }
}
