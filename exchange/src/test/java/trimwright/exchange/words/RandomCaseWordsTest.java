package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SchemaCaseGenerator;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

/** What is said of accepted cases, near to real ones and far from them. */
class RandomCaseWordsTest {
  private static final int CASES = 24;

  /** Two lines of a phone; a four-figure distance or a long order may pass it by a word. */
  private static final int LONGEST = 96;

  private static final Pattern FASTER = Pattern.compile("Ride ([0-9]+) (km/h|mph) or more");

  private int enoughSpeeds;
  private int reached;

  @Test
  void linesAreShortPlainAndTrue() {
    for (int seed = 0; seed < CASES; seed++) {
      CaseFile caseFile =
          CaseReader.read(SchemaCaseGenerator.text(seed), SectionFiles.NONE)
              .findValue()
              .orElseThrow();
      CaseSolver solver = CaseSolver.of(caseFile.rideCase());
      List<Double> speeds = new ArrayList<>();
      for (int kmh = 8; kmh <= 40; kmh += 4) {
        speeds.add(Unit.KILOMETRE_PER_HOUR.toSi(kmh));
      }
      Curve curve = solver.curve(speeds);
      for (TrimOutcome at : curve.outcomes()) {
        CauseOutcome cause = CauseSplit.of(solver, at.speed(), caseFile.notes().measuredPitch());
        for (Measures measures : Measures.values()) {
          check(caseFile, solver, curve, at, cause, measures);
        }
      }
    }
    // Otherwise the checks of the orders have seen nothing.
    assertThat(enoughSpeeds).isGreaterThan(10);
    assertThat(reached).isGreaterThan(10);
  }

  /** A child on parts that are floats, each as large as the schema lets it be. */
  @Test
  void aFloatIsSaidToBePushedUp() {
    String text =
        DemoCases.find("heavy-beginner")
            .orElseThrow()
            .text()
            .replace("mass_kg: 105", "mass_kg: 30")
            .replaceAll("(\\n    )(mass_kg: [0-3]\\.[0-9]+)", "$1$2$1volume_l: 20");
    CaseFile caseFile = CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
    CaseSolver solver = CaseSolver.of(caseFile.rideCase());
    double speed = Unit.KILOMETRE_PER_HOUR.toSi(5);
    TrimOutcome at = solver.trim(speed);
    assertThat(at).isInstanceOf(TrimOutcome.NoTrim.class);
    assertThat(((TrimOutcome.NoTrim) at).reason()).isEqualTo(NoTrimReason.STALLED);
    assertThat(((TrimOutcome.NoTrim) at).excess()).hasValue(TrimOutcome.Excess.REST);
    CauseWords words =
        CauseWords.of(
            caseFile, CauseSplit.of(solver, speed, OptionalDouble.empty()), Measures.METRIC);
    assertThat(words.order().orElseThrow()).startsWith("Check masses, volumes, wind and pull:");
  }

  private void check(
      CaseFile caseFile,
      CaseSolver solver,
      Curve curve,
      TrimOutcome at,
      CauseOutcome cause,
      Measures measures) {
    CauseWords words = CauseWords.of(caseFile, cause, measures);
    VerdictWords verdict = VerdictWords.of(caseFile, curve, at, words, measures);
    assertThat(words.why()).isNotEqualTo(verdict.first());
    for (String line : List.of(verdict.first(), verdict.second(), words.headline(), words.why())) {
      assertThat(line).hasSizeLessThanOrEqualTo(LONGEST);
    }
    List<String> all = new ArrayList<>(words.sentences());
    all.addAll(List.of(verdict.first(), verdict.second(), words.headline(), words.why()));
    assertThat(all)
        .allMatch(sentence -> Character.isUpperCase(sentence.charAt(0)) || isNumber(sentence))
        .allMatch(sentence -> sentence.endsWith("."))
        .noneMatch(sentence -> sentence.contains("  ") || sentence.contains("null"))
        .noneMatch(sentence -> sentence.matches(".*(?<![0-9.])0 (km/h|mph|mm|in)\\b.*"))
        .noneMatch(sentence -> sentence.matches(".*[^0-9a-z]-[0-9]+ (mm|km/h|kg).*"));
    enoughSpeed(verdict, solver, measures);
    if (at instanceof TrimOutcome.NoTrim none && none.reason() == NoTrimReason.FEET_CANNOT_REACH) {
      FootReach reach = FootReach.find(none).orElseThrow();
      double move = Amounts.of(measures).moveAtLeast(reach.shift()).distance();
      assertThat(Math.abs(move)).isGreaterThanOrEqualTo(reach.distance() - 1e-6);
      assertThat(Math.signum(move)).isEqualTo(reach.ahead() ? 1.0 : -1.0);
      reached++;
    }
  }

  /** The speed said to be enough carries the weight. */
  private void enoughSpeed(VerdictWords verdict, CaseSolver solver, Measures measures) {
    Matcher order = FASTER.matcher(verdict.first());
    if (!order.find()) {
      return;
    }
    double enough = measures.unit(Unit.KILOMETRE_PER_HOUR).toSi(Integer.parseInt(order.group(1)));
    if (solver.trim(enough) instanceof TrimOutcome.NoTrim none) {
      assertThat(none.reason()).isNotEqualTo(NoTrimReason.TOO_SLOW);
    }
    enoughSpeeds++;
  }

  private static boolean isNumber(String sentence) {
    return Character.isDigit(sentence.charAt(0));
  }
}
