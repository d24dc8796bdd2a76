package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class MotionCommandTest {
  private static final String TEXT = DemoCases.find("cold-salt-water").orElseThrow().text();
  private static final String[] SPEEDS = {"--from-kmh", "10", "--to-kmh", "34", "--step-kmh", "8"};

  /** Half of the last digit of a column with one decimal. */
  private static final double PRINTED = 0.051;

  @Test
  void theTableSaysWhatTheDocumentSays() {
    JsonNode document = Documents.of(run(TEXT, "--json"), "motion");
    List<String> rows =
        run(TEXT).outLines().stream().filter(line -> line.matches(" ?\\d+\\.\\d  .*")).toList();
    assertThat(rows).hasSameSizeAs(document.get("points"));
    for (int i = 0; i < rows.size(); i++) {
      String[] cells = rows.get(i).strip().split(" {2,}");
      JsonNode point = document.get("points").get(i);
      assertThat(number(cells[0])).isCloseTo(point.get("speed_kmh").asDouble(), within(PRINTED));
      JsonNode manners = point.get("manners");
      if (manners.isNull()) {
        assertThat(point.get("outcome").asString()).isNotEqualTo("trimmed");
        assertThat(cells[1]).isEqualTo("-");
        continue;
      }
      same(cells[1], manners.get("time_to_double_s"));
      assertThat(cells[2]).isEqualTo(manners.get("modes").get(0).get("mainly").asString());
      same(cells[5], manners.get("peak_pitch_rate_deg_s_per_cm"));
      same(cells[6], manners.get("seconds_to_10_cm"));
      JsonNode chop = manners.get("chop");
      assertThat(number(cells[7]))
          .isCloseTo(chop.get("foot_correction_rms_mm").asDouble(), within(0.51));
      same(cells[8], chop.get("deck_acceleration_rms_m_s2"));
      same(cells[9], chop.get("frequency_hz"));
      assertThat(cells[10]).isEqualTo(manners.get("hold_words").asString());
    }
  }

  @Test
  void theWordsAreTheDocuments() {
    List<String> printed = run(TEXT).outLines();
    Documents.of(run(TEXT, "--json"), "motion")
        .get("words")
        .forEach(word -> assertThat(printed).contains(word.asString()));
  }

  @Test
  void theFrequencyResponseStandsFromTheLongestWaveOn() {
    JsonNode document = Documents.of(run(TEXT, "--json"), "motion");
    JsonNode chop = document.get("points").get(2).get("manners").get("chop");
    double lastLength = Double.POSITIVE_INFINITY;
    for (JsonNode wave : chop.get("waves")) {
      assertThat(wave.get("length_m").asDouble()).isLessThan(lastLength);
      lastLength = wave.get("length_m").asDouble();
    }
    assertThat(chop.get("waves").size()).isGreaterThan(10);
    assertThat(chop.get("pitch_rms_deg").asDouble()).isPositive();
  }

  @Test
  void flatWaterHasNoChop() {
    String flat = TEXT.replaceFirst("chop_height_m: \\S+", "chop_height_m: 0");
    JsonNode document = Documents.of(run(flat, "--json"), "motion");
    assertThat(document.get("points").get(2).get("manners").get("chop").isNull()).isTrue();
    assertThat(run(flat).out()).contains("The case has no chop: flat water.");
  }

  @Test
  void badSpeedsAreRefusedTogether() {
    CommandRun run =
        CommandRun.withInput(TEXT, "motion", "-", "--from-kmh", "0", "--to-kmh", "500");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).anyMatch(l -> l.startsWith("--from-kmh"));
    assertThat(run.errLines()).anyMatch(l -> l.startsWith("--to-kmh"));
  }

  private static void same(String cell, JsonNode value) {
    if (value.isNull()) {
      assertThat(cell).isEqualTo("-");
    } else {
      assertThat(number(cell)).isCloseTo(value.asDouble(), within(PRINTED));
    }
  }

  private static double number(String cell) {
    return Double.parseDouble(cell);
  }

  private static CommandRun run(String text, String... options) {
    String[] words = new String[2 + SPEEDS.length + options.length];
    words[0] = "motion";
    words[1] = "-";
    System.arraycopy(SPEEDS, 0, words, 2, SPEEDS.length);
    System.arraycopy(options, 0, words, 2 + SPEEDS.length, options.length);
    return CommandRun.withInput(text, words);
  }
}
