package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class ChangeCommandTest {
  private static final String NOSE_UP = DemoCases.find("nose-up-mismatch").orElseThrow().text();

  private static final JsonNode DOCUMENT = Documents.of(run(NOSE_UP, "--json"), "change");

  @Test
  void theCureIsTheWedgeAndItsCaseFileGivesThePromisedRide() {
    assertThat(DOCUMENT.get("do_first").get("kinds").get(0).asString()).isEqualTo("wedge");
    JsonNode wedge = kind("wedge");
    assertThat(wedge.get("verdict").asString()).isEqualTo("helps");
    JsonNode best = wedge.get("best");
    JsonNode after = Documents.of(run(best.get("case").asString(), "--json"), "change");
    assertThat(after.get("case_digest")).isEqualTo(best.get("case_digest"));
    // The same numbers in every digit of the document.
    assertThat(after.get("present")).isEqualTo(best.get("ride"));
    assertThat(after.get("do_first").isNull()).isTrue();
    assertThat(after.get("words").get(0).asString()).startsWith("Change nothing: ");
  }

  @Test
  void theWedgeLeavesTheFeetAlone() {
    JsonNode now = DOCUMENT.get("present").get("trim");
    JsonNode then = kind("wedge").get("best").get("ride").get("trim");
    double turned = kind("wedge").get("best").get("made").get(0).get("nose_up_deg").asDouble();
    assertThat(then.get("pitch_deg").asDouble() - now.get("pitch_deg").asDouble())
        .isCloseTo(turned, within(0.1));
    assertThat(then.get("foot_share").asDouble())
        .isCloseTo(now.get("foot_share").asDouble(), within(0.005));
  }

  @Test
  void whatIsToldStandsInTheTextToo() {
    List<String> printed = run(NOSE_UP).outLines();
    DOCUMENT.get("words").forEach(word -> assertThat(printed).contains(word.asString()));
    DOCUMENT.get("cautions").forEach(word -> assertThat(printed).contains(word.asString()));
    DOCUMENT
        .get("rule_out_first")
        .forEach(
            item ->
                assertThat(printed)
                    .anyMatch(line -> line.contains(". " + item.get("what").asString() + ". ")));
  }

  @Test
  void whatBreaksFirstFlightsIsNotAdvised() {
    String text = DemoCases.find("heavy-beginner").orElseThrow().text();
    JsonNode document = Documents.of(run(text, "--json"), "change");
    assertThat(document.get("asked").get("first_flights").asBoolean()).isTrue();
    assertThat(document.get("present").get("breaks").toString())
        .isEqualTo("[\"bow_clear\",\"breach\"]");
    assertThat(document.get("do_first").isNull()).isTrue();
    assertThat(document.get("pairs").size()).isZero();
    document
        .get("changes")
        .forEach(c -> assertThat(c.get("verdict").asString()).isIn("breaks_limits", "none_there"));
    assertThat(document.get("words").get(0).asString())
        .startsWith("Do not give this setup to somebody who flies for the first time");
  }

  @Test
  void badOptionsAreRefusedTogether() {
    CommandRun run = run(NOSE_UP, "--feet-mm", "-5", "--weigh", "comfort=2");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines())
        .contains("--feet-mm must be from 0 to 400 mm, was -5.")
        .anyMatch(line -> line.startsWith("--weigh knows no wish comfort"));
  }

  private static JsonNode kind(String kind) {
    for (JsonNode change : DOCUMENT.get("changes")) {
      if (change.get("kind").asString().equals(kind)) {
        return change;
      }
    }
    throw new AssertionError(kind);
  }

  private static CommandRun run(String text, String... options) {
    List<String> words = new ArrayList<>(List.of("change", "-"));
    words.addAll(Arrays.asList(options));
    return CommandRun.withInput(text, words.toArray(String[]::new));
  }
}
