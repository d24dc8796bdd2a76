package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class FallsCommandTest {
  private static final String TEXT = DemoCases.find("heavy-beginner").orElseThrow().text();

  private static final JsonNode DOCUMENT = Documents.of(run(TEXT, "--json"), "falls");

  @Test
  void theTablesSayWhatTheDocumentSays() {
    List<String> printed = run(TEXT).outLines();
    List<String> rows = printed.stream().filter(line -> line.matches(" ?\\d+\\.\\d  .*")).toList();
    assertThat(rows).hasSameSizeAs(DOCUMENT.get("points"));
    for (int i = 0; i < rows.size(); i++) {
      String[] cells = rows.get(i).strip().split(" {2,}");
      JsonNode point = DOCUMENT.get("points").get(i);
      JsonNode drop = point.get("nose_drop");
      JsonNode breach = point.get("breach");
      near(cells[0], point.get("speed_kmh"), 0.051);
      near(cells[1], drop.get("lowest_pitch_deg"), 0.051);
      near(cells[2], drop.get("bow_clearance_mm"), 0.51);
      time(cells[3], drop.get("ended_by").asString().split("_")[0], drop.get("contact_s"));
      time(cells[4], breach.get("ended_by").asString().split("_")[0], breach.get("followed_s"));
      assertThat(cells[5].equals("inside")).isEqualTo(point.get("inside").asBoolean());
    }
    DOCUMENT.get("words").forEach(word -> assertThat(printed).contains(word.asString()));
  }

  @Test
  void insideIsWhatTheTimesSay() {
    double bow = DOCUMENT.get("least_bow_clear_time_s").asDouble();
    double out = DOCUMENT.get("least_breach_time_s").asDouble();
    DOCUMENT
        .get("points")
        .forEach(
            p -> {
              JsonNode clear = p.get("nose_drop").get("bow_clear_s");
              boolean bowClear = clear.isNull() || clear.asDouble() >= bow;
              JsonNode breach = p.get("breach");
              boolean stays =
                  breach.get("ended_by").asString().equals("ran_out")
                      || breach.get("followed_s").asDouble() >= out;
              assertThat(p.get("bow_clear_inside").asBoolean()).isEqualTo(bowClear);
              assertThat(p.get("breach_inside").asBoolean()).isEqualTo(stays);
              assertThat(p.get("inside").asBoolean()).isEqualTo(bowClear && stays);
            });
  }

  @Test
  void eachPostureHasCapsOrComesNearest() {
    assertThat(DOCUMENT.get("first_flights").size()).isEqualTo(3);
    DOCUMENT
        .get("first_flights")
        .forEach(v -> assertThat(v.get("caps").isNull()).isNotEqualTo(v.get("nearest").isNull()));
  }

  @Test
  void optionsGoBeforeTheCase() {
    assertThat(DOCUMENT.get("throttle_ramp_s").asDouble()).isEqualTo(0.8);
    assertThat(DOCUMENT.get("throttle_ramp_from").asString()).isEqualTo("case");
    assertThat(DOCUMENT.get("max_power_w").isNull()).isTrue();
    JsonNode asked =
        Documents.of(run(TEXT, "--json", "--ramp-s", "2", "--max-power-w", "1500"), "falls");
    assertThat(asked.get("throttle_ramp_s").asDouble()).isEqualTo(2);
    assertThat(asked.get("throttle_ramp_from").asString()).isEqualTo("asked");
    assertThat(asked.get("max_power_w").asDouble()).isEqualTo(1500);
    // Standing at some 21 km/h, where the drive has far more than the ride takes.
    assertThat(followed(asked)).isGreaterThan(followed(DOCUMENT));
  }

  @Test
  void withoutARampTheUsualOneIsTakenAndSaid() {
    String text = TEXT.replaceFirst("    throttle_ramp_s: .*\n", "");
    assertThat(text).isNotEqualTo(TEXT);
    JsonNode document = Documents.of(run(text, "--json"), "falls");
    assertThat(document.get("throttle_ramp_s").asDouble()).isEqualTo(0.3);
    assertThat(document.get("throttle_ramp_from").asString()).isEqualTo("usual");
    assertThat(document.get("words").toString()).contains("the case says no throttle_ramp_s");
  }

  @Test
  void aShopsTighterLimitsAreHeld(@TempDir Path folder) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("limits.yaml"), "least_bow_clear_time_s: 1.5\nleast_breach_time_s: 2\n");
    JsonNode tight = Documents.of(run(TEXT, "--json", "--limits", file.toString()), "falls");
    assertThat(tight.get("least_bow_clear_time_s").asDouble()).isEqualTo(1.5);
    assertThat(tight.get("words").toString()).contains("tightened by your shop");
  }

  @Test
  void badOptionsAreRefusedTogether() {
    CommandRun run = run(TEXT, "--ramp-s", "0", "--max-power-w", "-5");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines())
        .contains("--ramp-s must be from 0.05 to 10 s, was 0.")
        .contains("--max-power-w must be from 1 to 100000 W, was -5.");
  }

  @Test
  void powerIsNotCappedWithoutADrive() {
    String pulled =
        TEXT.replaceFirst("(?s)  drive:\n(    .*?\n)+(?=  fuselage)", "")
            .replaceFirst("(?s)  battery:\n(    .*?\n)+(?=  mast)", "");
    assertThat(pulled).isNotEqualTo(TEXT);
    CommandRun run = run(pulled, "--max-power-w", "1000");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines().get(0)).contains("this case has none");
    JsonNode document = Documents.of(run(pulled, "--json"), "falls");
    assertThat(document.get("words").toString())
        .contains("Without a drive it is the pull that goes to nothing in 0.30 s");
  }

  private static double followed(JsonNode document) {
    return document.get("points").get(4).get("breach").get("followed_s").asDouble();
  }

  private static void near(String cell, JsonNode value, double off) {
    assertThat(Double.parseDouble(cell)).isCloseTo(value.asDouble(), within(off));
  }

  private static void time(String cell, String what, JsonNode when) {
    if (what.equals("ran")) {
      assertThat(cell).isEqualTo("nothing");
      return;
    }
    assertThat(cell).startsWith(what.equals("limit") ? "not followed" : what);
    near(cell.replaceAll("[^0-9.]", ""), when, 0.0051);
  }

  private static CommandRun run(String text, String... options) {
    List<String> words = new ArrayList<>(List.of("falls", "-"));
    words.addAll(Arrays.asList(options));
    return CommandRun.withInput(text, words.toArray(String[]::new));
  }
}
