package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.trim.TrimPoint;

class BenchWriterTest {
  /** An answer is made, sent and read for every move of a slider [letters]. */
  private static final int LARGEST = 55_000;

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private static JsonNode answer(Measures measures) {
    return MAPPER.readTree(Documents.bench(Samples.caseFile(), Samples.curve(), measures));
  }

  @Test
  void pointsCarryTheNumbersOfTheCurveDocumentUnderTheSameNames() {
    JsonNode answer = answer(Measures.IMPERIAL);
    JsonNode bench = answer.get("points");
    List<String> keys = answer.get("point_keys").valueStream().map(JsonNode::stringValue).toList();
    JsonNode curve = MAPPER.readTree(Documents.curve(Samples.curve())).get("points");
    assertThat(bench.size()).isEqualTo(curve.size());
    for (int i = 0; i < curve.size(); i++) {
      JsonNode point = bench.get(i);
      for (var field : curve.get(i).properties()) {
        // Bands follow in an answer of their own.
        if (field.getValue().isObject()
            || field.getKey().contains("_band")
            || field.getKey().startsWith("band_")) {
          continue;
        }
        int place = keys.indexOf(field.getKey());
        JsonNode value = place < 0 ? point.get(field.getKey()) : point.at("/numbers/" + place);
        if (field.getValue().isNumber()) {
          double exact = field.getValue().doubleValue();
          // Half of the fewest decimals, or of a whole Reynolds number.
          double half = field.getKey().startsWith("reynolds") ? 0.5 : 0.05;
          assertThat(value.doubleValue()).as(field.getKey()).isCloseTo(exact, within(half));
        } else if (place >= 0) {
          assertThat(value.isNumber()).as(field.getKey()).isFalse();
        } else if (!field.getKey().equals("reason") && !field.getKey().equals("moment_terms_nm")) {
          assertThat(value).as(field.getKey()).isEqualTo(field.getValue());
        }
      }
    }
  }

  @Test
  void momentsAreThoseOfTheCurveDocumentAndSumToZero() {
    JsonNode answer = answer(Measures.METRIC);
    JsonNode curve = MAPPER.readTree(Documents.curve(Samples.curve()));
    JsonNode terms = curve.at("/points/10/moment_terms_nm");
    JsonNode moments = answer.at("/points/10/moments");
    double sum = 0;
    for (int i = 0; i < terms.size(); i++) {
      double exact = terms.get(answer.at("/moment_keys/" + i).stringValue()).doubleValue();
      assertThat(moments.get(i).doubleValue()).isCloseTo(exact, within(0.0005));
      sum += moments.get(i).doubleValue();
    }
    assertThat(moments.size()).isEqualTo(9);
    assertThat(sum).isCloseTo(0, within(0.005));
  }

  @Test
  void forcesBalanceTheCraft() {
    JsonNode answer = answer(Measures.METRIC);
    TrimPoint trim = Samples.pointAt(20);
    double legs = 0;
    for (JsonNode force : answer.at("/points/10/forces")) {
      JsonNode kind = answer.get("force_kinds").get(force.get(0).intValue());
      double ahead = force.get(3).doubleValue();
      double up = force.get(4).doubleValue();
      switch (kind.get("kind").stringValue()) {
        case "front-foot-load", "back-foot-load" -> legs -= up;
        case "front-wing-lift" -> assertThat(up).isCloseTo(trim.frontWingLift(), within(0.05));
        case "drag" -> assertThat(ahead).isCloseTo(-trim.drag(), within(0.05));
        default -> assertThat(force.get(1).isNumber()).isTrue();
      }
    }
    assertThat(legs).isCloseTo(88 * 9.80665, within(0.1));
  }

  @Test
  void wordsSpeakTheReadersMeasuresAndNumbersStay() {
    JsonNode metric = answer(Measures.METRIC);
    JsonNode imperial = answer(Measures.IMPERIAL);
    assertThat(verdict(metric)).contains("km/h");
    assertThat(verdict(imperial)).contains("mph").doesNotContain("km/h");
    assertThat(imperial.get("points").get(10).get("speed_kmh"))
        .isEqualTo(metric.get("points").get(10).get("speed_kmh"));
  }

  /** Both lines at one speed. */
  private static String verdict(JsonNode answer) {
    StringBuilder lines = new StringBuilder();
    for (JsonNode place : answer.at("/points/10/verdict")) {
      lines.append(answer.get("phrases").get(place.intValue()).stringValue()).append('\n');
    }
    return lines.toString();
  }

  @Test
  void eachSentenceStandsOnceAndIsPointedAt() {
    JsonNode answer = answer(Measures.METRIC);
    List<String> phrases = answer.get("phrases").valueStream().map(JsonNode::stringValue).toList();
    assertThat(phrases).doesNotHaveDuplicates().doesNotContain("");
    Set<Integer> places = new TreeSet<>();
    for (JsonNode point : answer.get("points")) {
      point.get("verdict").forEach(place -> places.add(place.intValue()));
      places.add(point.at("/cause/headline").intValue());
      point.at("/cause/sentences").forEach(place -> places.add(place.intValue()));
      point.get("split").forEach(row -> places.add(row.get(0).intValue()));
    }
    assertThat(places)
        .containsExactlyElementsOf(IntStream.range(0, phrases.size()).boxed().toList());
  }

  @Test
  void staysSmallEnoughForEveryMove() {
    assertThat(Documents.bench(Samples.measured(5), Samples.curve(), Measures.METRIC))
        .hasSizeLessThan(LARGEST)
        .doesNotContain("NaN")
        .doesNotContain("Infinity")
        .doesNotContain("\n");
  }

  @Test
  void causesMustBelongToTheCurve() {
    assertThatThrownBy(
            () ->
                BenchWriter.accepted(
                    1, Measures.METRIC, Samples.caseFile(), Samples.curve(), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("31");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 3, 0",
    "-0.0004, 3, 0",
    "-0.0005, 3, -0.001",
    "12.3456, 2, 12.35",
    "1200, 1, 1200",
    "0.05, 4, 0.05",
    "-7.25, 1, -7.3",
    "1e17, 2, 1.0E17",
    "999.996, 2, 1000"
  })
  void decimalsAreBoundedAndNoZeroTrails(double value, int decimals, String text) {
    assertThat(FixedDecimals.text(value, decimals)).isEqualTo(text);
  }

  @Test
  void anyNumberReadsBackWithinHalfOfItsLastDecimal() {
    Random random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(9) - 4);
      int decimals = random.nextInt(10);
      // The scaled value itself is rounded in its last place.
      double half = 0.5 * Math.pow(10, -decimals) + 4 * Math.ulp(value);
      assertThat(Double.parseDouble(FixedDecimals.text(value, decimals)))
          .isCloseTo(value, within(half));
    }
  }
}
