package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

class FeelWordsTest {
  private static String words(Curve curve, TrimOutcome outcome, Measures measures) {
    List<String> all = FeelWords.of(Samples.caseFile(), curve, outcome, measures);
    assertThat(all).isNotEmpty().allMatch(sentence -> sentence.endsWith("."));
    return String.join("\n", all);
  }

  private static TrimOutcome at(double share) {
    return new TrimOutcome.Trimmed(Samples.point(20, 0, share));
  }

  @ParameterizedTest
  @CsvSource({"0.62, the front leg tires first", "0.4, the back leg tires first", "0.5, both legs"})
  void theHeavierLegTiresFirst(double share, String why) {
    assertThat(words(Samples.curve(), at(share), Measures.METRIC)).contains(why);
  }

  @Test
  void changesAreReadFromTheCurve() {
    Curve curve =
        new Curve(
            List.of(
                new TrimOutcome.Trimmed(Samples.point(20, 2, 0.5)),
                new TrimOutcome.Trimmed(Samples.point(30, 0, 0.6))),
            List.of(),
            java.util.OptionalDouble.empty(),
            List.of(),
            Optional.empty());
    String metric = words(curve, curve.outcomes().get(0), Measures.METRIC);
    // Half way between the two: one degree, and half of the load that moves over
    assertThat(metric).contains("5 km/h faster: the nose drops 1.0° and ").contains("front foot");
    assertThat(words(curve, curve.outcomes().get(1), Measures.METRIC))
        .contains("5 km/h slower: the nose rises 1.0°");
    assertThat(words(curve, curve.outcomes().get(0), Measures.IMPERIAL))
        .contains("3 mph faster: ")
        .contains(" lb")
        .doesNotContain("km/h");
    assertThat(metric).contains("No speed here is inside every limit");
  }

  @Test
  void sideOfTheWeightFollowsTheRoots() {
    assertThat(words(even(new EvenFeetSpeed(5, true)), at(0.5), Measures.METRIC))
        .contains("Slower than 18 km/h the weight goes to your back foot, faster to your front");
    assertThat(words(even(new EvenFeetSpeed(5, false)), at(0.5), Measures.METRIC))
        .contains("Slower than 18 km/h the weight goes to your front foot, faster to your back");
    assertThat(
            words(
                even(new EvenFeetSpeed(5, false), new EvenFeetSpeed(7.5, true)),
                at(0.5),
                Measures.METRIC))
        .contains("Between 18 and 27 km/h the weight is on your back foot");
  }

  private static Curve even(EvenFeetSpeed... speeds) {
    Curve curve = Samples.curve();
    return new Curve(
        curve.outcomes(),
        List.of(speeds),
        curve.levelSpeed(),
        curve.rideableIntervals(),
        curve.rideableWindow());
  }

  @Test
  void whereThereIsNoRideItSaysWhy() {
    TrimOutcome none =
        new TrimOutcome.NoTrim(8 * Samples.KMH, NoTrimReason.TOO_SLOW, Optional.empty());
    assertThat(words(Samples.curve(), none, Measures.METRIC))
        .contains("At 8 km/h there is no steady ride to feel: too slow")
        .contains("the stall shows as");
  }
}
