package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.exchange.read.Digest;

class CurveWriterTest {
  /** Nine terms of some 200 N·m: what rounding of doubles leaves of their sum. */
  private static final double SUM_ROUNDING = 1e-12;

  /** Ten significant digits are printed. */
  private static final double PRINTED = 1e-9;

  private static final List<String> CONTRACT =
      List.of(
          ("speed_kmh outcome pitch_deg front_wing_angle_of_attack_deg foot_share"
                  + " foot_pressure_ahead_of_mast_mm front_leg_kg back_leg_kg forward_reserve_mm"
                  + " thrust_n drag_n electric_power_w front_wing_lift_n stabilizer_lift_n"
                  + " front_wing_cl reynolds_front_wing stall_margin_deg static_margin_mm"
                  + " deck_lever_share_mm foot_share_growth_per_kmh pitch_per_cm_deg"
                  + " trim_residual_n trim_residual_nm moment_terms_nm limits")
              .split(" "));

  private final JsonNode json = JsonMapper.shared().readTree(Documents.curve(Samples.curve()));

  @Test
  void startsWithFormatModelVersionAndDigest() {
    assertThat(List.copyOf(json.propertyNames()).subList(0, 3))
        .containsExactly("format", "model_version", "case_digest");
    assertThat(json.get("format").stringValue()).isEqualTo("trimwright-curve/1");
    assertThat(json.get("case_digest").stringValue()).isEqualTo(Digest.of("sample"));
  }

  @Test
  void everyPointHasEveryNameOfTheContractInOrder() {
    for (JsonNode point : json.get("points")) {
      assertThat(List.copyOf(point.propertyNames()).subList(0, CONTRACT.size()))
          .isEqualTo(CONTRACT);
    }
  }

  @Test
  void aPointWithoutTrimIsNullAndSaysWhy() {
    JsonNode slow = pointAt(10);
    assertThat(slow.get("outcome").stringValue()).isEqualTo("too_slow");
    CONTRACT.subList(2, CONTRACT.size()).forEach(n -> assertThat(slow.get(n).isNull()).isTrue());
    assertThat(slow.get("reason").stringValue()).startsWith("Too slow");
    assertThat(slow.get("would_need").isNull()).isTrue();
  }

  @Test
  void anImpossibleBalanceSaysWhatItWouldNeed() {
    JsonNode unreachable = pointAt(37);
    assertThat(unreachable.get("outcome").stringValue()).isEqualTo("feet_cannot_reach");
    assertThat(List.copyOf(unreachable.get("would_need").propertyNames()))
        .containsExactly(
            "pitch_deg",
            "foot_share",
            "foot_pressure_ahead_of_mast_mm",
            "thrust_n",
            "electric_power_w");
    assertThat(unreachable.get("reason").stringValue())
        .contains("58 mm ahead of your front foot", "at least 60 mm forward");
    assertThat(unreachable.get("would_need").get("foot_share").doubleValue()).isEqualTo(1.12);
  }

  @Test
  void momentTermsSumToZero() {
    JsonNode terms = pointAt(20).get("moment_terms_nm");
    double sum = 0;
    for (JsonNode term : terms) {
      sum += term.doubleValue();
    }
    assertThat(List.copyOf(terms.propertyNames()))
        .containsExactly(
            "front_wing",
            "stabilizer",
            "thrust_line",
            "drags",
            "masses",
            "feet",
            "deck_lever",
            "air",
            "buoyancy");
    assertThat(sum).isCloseTo(0, within(SUM_ROUNDING));
  }

  @Test
  void unitsAreThoseOfTheNames() {
    JsonNode point = pointAt(20);
    assertThat(point.get("speed_kmh").doubleValue()).isEqualTo(20);
    assertThat(point.get("static_margin_mm").doubleValue()).isEqualTo(31);
    assertThat(point.get("foot_share_growth_per_kmh").doubleValue())
        .isCloseTo(0.021, within(PRINTED));
    assertThat(point.get("pitch_per_cm_deg").doubleValue()).isCloseTo(0.31, within(PRINTED));
    assertThat(point.get("pitch_deg").doubleValue()).isCloseTo(2600.0 / 400 - 3.6, within(PRINTED));
    assertThat(point.get("trim_residual_n").doubleValue()).isEqualTo(3.2e-10);
  }

  @Test
  void limitsAreLowerCaseCodesInAFixedOrder() {
    JsonNode limits = pointAt(16).get("limits");
    assertThat(limits.valueStream().map(JsonNode::stringValue))
        .containsExactly("stall_margin", "pitch");
    assertThat(pointAt(20).get("limits").size()).isZero();
  }

  @Test
  void speedsThatPeopleAskForStandBesideThePoints() {
    assertThat(json.get("even_feet_speeds").get(0).get("speed_kmh").doubleValue()).isEqualTo(21.35);
    assertThat(json.get("even_feet_speeds").get(1).get("direction").stringValue())
        .isEqualTo("falling");
    assertThat(json.get("level_speed_kmh").doubleValue()).isEqualTo(26.87);
    assertThat(json.get("rideable_intervals").get(0).get("from_kmh").doubleValue()).isEqualTo(17);
    assertThat(json.get("rideable_to_kmh").doubleValue()).isEqualTo(34);
    JsonNode none = JsonMapper.shared().readTree(Documents.curve(Samples.emptyCurve()));
    assertThat(none.get("level_speed_kmh").isNull()).isTrue();
    assertThat(none.get("rideable_from_kmh").isNull()).isTrue();
  }

  @Test
  void csvHoldsTheSameNamesAndNumbers() throws IOException {
    try (CSVParser csv =
        CSVParser.parse(
            new StringReader(CurveWriter.csv(Samples.bands(Samples.curve()))),
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      List<CSVRecord> rows = csv.getRecords();
      assertThat(rows).hasSize(json.get("points").size());
      List<String> names = new ArrayList<>(CONTRACT);
      names.removeAll(List.of("outcome", "moment_terms_nm", "limits"));
      for (int i = 0; i < rows.size(); i++) {
        JsonNode point = json.get("points").get(i);
        CSVRecord row = rows.get(i);
        assertThat(row.get("outcome")).isEqualTo(point.get("outcome").stringValue());
        for (String name : names) {
          assertThat(row.get(name))
              .isEqualTo(
                  point.get(name).isNull() ? "" : Double.toString(point.get(name).doubleValue()));
        }
        JsonNode band = point.get("pitch_deg_band");
        assertThat(row.get("pitch_deg_band.high"))
            .isEqualTo(band.isNull() ? "" : Double.toString(band.get(1).doubleValue()));
        if (!point.get("moment_terms_nm").isNull()) {
          assertThat(Double.parseDouble(row.get("moment_terms_nm.feet")))
              .isEqualTo(point.get("moment_terms_nm").get("feet").doubleValue());
        }
      }
    }
  }

  @Test
  void tableIsAlignedAndFitsATerminal() {
    String table = CurveWriter.table(Samples.caseFile(), Samples.bands(Samples.curve()));
    List<String> lines = table.lines().toList();
    assertThat(lines.get(2)).startsWith("speed").endsWith("outcome");
    assertThat(lines.get(3)).contains("km/h").contains("kg").contains("deg");
    assertThat(lines.subList(0, 34)).allSatisfy(l -> assertThat(l.length()).isLessThan(100));
    int outcome = lines.get(2).indexOf("outcome");
    assertThat(lines.get(4).indexOf("too slow")).isEqualTo(outcome);
    assertThat(lines.get(16).indexOf("rideable")).isEqualTo(outcome);
  }

  @Test
  void bandsAreLowestAndHighestUnderTheNumbersName() {
    JsonNode point = pointAt(20);
    double pitch = point.get("pitch_deg").doubleValue();
    assertThat(point.get("pitch_deg_band").get(0).doubleValue())
        .isCloseTo(pitch - 1, within(PRINTED));
    assertThat(point.get("pitch_deg_band").get(1).doubleValue())
        .isCloseTo(pitch + 1, within(PRINTED));
    assertThat(point.get("foot_share_band")).hasSize(2);
    JsonNode part = point.get("band_parts").get("foot_share").get(0);
    assertThat(part.get("input").stringValue()).isEqualTo("downwash");
    assertThat(part.get("variance_share").doubleValue()).isCloseTo(0.64, within(PRINTED));
    assertThat(pointAt(10).get("pitch_deg_band").isNull()).isTrue();
    assertThat(point.get("band_parts").propertyNames())
        .containsExactly("pitch_deg", "foot_share", "electric_power_w");
    assertThat(pointAt(10).get("band_parts").isNull()).isTrue();
    assertThat(json.get("even_feet_speeds").get(0).get("speed_kmh_band").isNull()).isTrue();
    assertThat(json.get("level_speed_kmh_band").get(0).doubleValue())
        .isCloseTo(18, within(PRINTED));
    assertThat(json.get("rideable_to_kmh_band").isNull()).isTrue();
  }

  private JsonNode pointAt(double kmh) {
    return json.get("points")
        .valueStream()
        .filter(p -> p.get("speed_kmh").doubleValue() == kmh)
        .findFirst()
        .orElseThrow();
  }
}
