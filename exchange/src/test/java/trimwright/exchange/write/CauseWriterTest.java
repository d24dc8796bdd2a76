package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.exchange.read.CaseFile;
import trimwright.seed.RunSeed;

class CauseWriterTest {
  private static final JsonMapper DECIMAL =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  @Property(tries = 200, seed = RunSeed.VALUE)
  void partsAddUpInEveryPrintedDigit(
      @ForAll @DoubleRange(min = -15, max = 15) double ridden,
      @ForAll @DoubleRange(min = -15, max = 15) double wished,
      @ForAll @DoubleRange(min = -15, max = 15) double measured,
      @ForAll @DoubleRange(min = -0.5, max = 1.5) double share) {
    CaseFile caseFile = Samples.measured(measured);
    JsonNode json =
        DECIMAL.readTree(
            CauseWriter.json(
                caseFile,
                18 * Samples.KMH,
                Samples.split(
                    caseFile, Samples.point(18, ridden, share), Samples.point(25, wished, 0.5)),
                Optional.of(Samples.splitBands())));
    for (String name : List.of("pitch_deg", "foot_share", "foot_pressure_mm")) {
      JsonNode parts = json.get(name);
      assertThat(number(parts, "speed_part").add(number(parts, "set_part")))
          .isEqualByComparingTo(number(parts, "ridden").subtract(number(parts, "wanted")));
    }
    JsonNode pitch = json.get("pitch_deg");
    assertThat(
            number(pitch, "speed_part")
                .add(number(pitch, "set_part"))
                .add(number(pitch, "unexplained_part")))
        .isEqualByComparingTo(number(pitch, "measured").subtract(number(pitch, "wanted")));
  }

  private static BigDecimal number(JsonNode parts, String name) {
    return parts.get(name).decimalValue();
  }

  @Test
  void holdsBothSpeedsAndBothBalances() {
    JsonNode json = DECIMAL.readTree(Documents.cause(Samples.caseFile()));
    assertThat(json.get("format").stringValue()).isEqualTo("trimwright-cause/1");
    assertThat(json.get("ridden_speed_kmh").doubleValue()).isEqualTo(18);
    assertThat(json.get("wished_speed_kmh").doubleValue()).isEqualTo(25);
    assertThat(json.get("moment_terms_nm").get("ridden").size()).isEqualTo(9);
    assertThat(json.get("moment_terms_nm").get("at_wished_speed").size()).isEqualTo(9);
    assertThat(json.get("pitch_deg").get("measured").isNull()).isTrue();
    assertThat(json.get("no_split").isNull()).isTrue();
    assertThat(json.get("rule_out_first").size()).isEqualTo(6);
  }

  @Test
  void saysWhySplitIsMissing() {
    JsonNode json = DECIMAL.readTree(Documents.noSplit(true));
    assertThat(json.get("pitch_deg").isNull()).isTrue();
    assertThat(json.get("no_split").get("which").stringValue()).isEqualTo("wished_speed");
    assertThat(json.get("no_split").get("reason").stringValue()).isEqualTo("too_slow");
    assertThat(json.get("words").get("headline").stringValue()).isNotBlank();
  }

  @Test
  void everySpeedWithoutTrimIsThere() {
    JsonNode none = DECIMAL.readTree(Documents.bothFail()).get("no_split");
    assertThat(none.get("which").stringValue()).isEqualTo("wished_speed");
    assertThat(none.get("every").valueStream().map(n -> n.get("which").stringValue()))
        .containsExactly("wished_speed", "ridden_speed");
    assertThat(none.get("flies_from_kmh").doubleValue()).isEqualTo(14);
  }

  @Test
  void shownPartsAddUpInTheTable() {
    CaseFile caseFile = Samples.measured(5);
    List<String> lines =
        CauseWriter.table(caseFile, Documents.split(caseFile), Optional.of(Samples.splitBands()))
            .lines()
            .toList();
    assertThat(cell(lines, "speed part").add(cell(lines, "set part")))
        .isEqualByComparingTo(cell(lines, "ridden").subtract(cell(lines, "wanted")));
  }

  private static BigDecimal cell(List<String> lines, String row) {
    String line = lines.stream().filter(l -> l.startsWith(row + " ")).findFirst().orElseThrow();
    return new BigDecimal(line.substring(row.length()).strip().split(" +")[0]);
  }
}
