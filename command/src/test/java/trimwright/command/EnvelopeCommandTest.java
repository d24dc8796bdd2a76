package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class EnvelopeCommandTest {
  private static final String TEXT = DemoCases.find("nose-up-mismatch").orElseThrow().text();

  @Test
  void aShopsTighterLimitsChangeTheTakeOffAndTheTurns(@TempDir Path folder) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("limits.yaml"),
            "most_take_off_trim_deg: 4\nleast_take_off_ramp_s: 8\nmost_bank_deg: 12\n"
                + "least_landing_load: 6\n");
    JsonNode chosen = envelope();
    JsonNode tight = envelope("--limits", file.toString());
    assertThat(tight.get("take_off").get("lift_off_kmh").asDouble())
        .isGreaterThan(chosen.get("take_off").get("lift_off_kmh").asDouble() + 0.5);
    assertThat(tight.get("take_off").get("ramped").get("throttle_s").asDouble()).isEqualTo(8);
    assertThat(tight.get("turns").get("tightest").get("bank_deg").asDouble())
        .isLessThanOrEqualTo(12 + 1e-9);
    assertThat(tight.get("loads").get("mast").get("landing_nm").asDouble())
        .isGreaterThan(1.9 * chosen.get("loads").get("mast").get("landing_nm").asDouble());
  }

  @Test
  void bothPosturesStandBesideEachOther() {
    JsonNode document = envelope();
    assertThat(document.get("take_off").get("posture").asString()).isEqualTo("standing");
    assertThat(document.get("other_take_off").get("posture").asString()).isEqualTo("kneeling");
  }

  @Test
  void aScuffedWingIsSaidToStallEarlierOnARoughNose() {
    assertThat(words(TEXT)).noneMatch(word -> word.contains("rough nose"));
    String scuffed = TEXT.replace("  front_wing:\n", "  front_wing:\n    finish: scuffed\n");
    assertThat(scuffed).isNotEqualTo(TEXT);
    assertThat(words(scuffed))
        .filteredOn(word -> word.contains("rough nose"))
        .singleElement()
        .asString()
        .startsWith("The scuffed front wing is computed with fine scratches")
        .contains("14 to 20 % less of the largest lift")
        .endsWith("the front wing would stall at a speed 8 to 12 % higher.");
    assertThat(words(scuffed, "--fitted-sections")).noneMatch(word -> word.contains("rough nose"));
  }

  private static List<String> words(String text, String... options) {
    List<String> said = new ArrayList<>();
    envelopeOf(text, options).get("words").forEach(word -> said.add(word.asString()));
    return said;
  }

  private static JsonNode envelope(String... options) {
    return envelopeOf(TEXT, options);
  }

  private static JsonNode envelopeOf(String text, String... options) {
    String[] words = new String[options.length + 3];
    words[0] = "envelope";
    words[1] = "-";
    words[2] = "--json";
    System.arraycopy(options, 0, words, 3, options.length);
    return Documents.of(CommandRun.withInput(text, words), "envelope");
  }
}
