package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class CauseCommandTest {
  private static final String TEXT = DemoCases.find("nose-up-mismatch").orElseThrow().text();

  private static CommandRun cause(String... options) {
    String[] words = new String[options.length + 2];
    words[0] = "cause";
    words[1] = "-";
    System.arraycopy(options, 0, words, 2, options.length);
    return CommandRun.withInput(TEXT, words);
  }

  @Test
  void printsADocument() {
    JsonNode document = Documents.of(cause("--speed-kmh", "22", "--json"), "cause");
    assertThat(document.get("ridden_speed_kmh").asDouble()).isEqualTo(22);
  }

  @Test
  void printsWordsAndNumbers() {
    CommandRun run = cause("--speed-kmh", "22");
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("nose-up").contains("°");
  }

  @Test
  void aSpeedThatCarriesNobodyIsAnAnswer() {
    JsonNode document = Documents.of(cause("--speed-kmh", "3", "--json"), "cause");
    assertThat(document.get("pitch_deg").isNull()).isTrue();
    assertThat(document.get("no_split").get("speed_kmh").asDouble()).isEqualTo(3);
    assertThat(document.get("no_split").get("which").asString()).isEqualTo("ridden_speed");
    assertThat(cause("--speed-kmh", "3").status()).isZero();
  }

  @Test
  void theSpeedIsNeeded() {
    CommandRun run = cause();
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--speed-kmh");
  }

  @ParameterizedTest
  @CsvSource({"0, from 1 to 100 km/h", "101, from 1 to 100 km/h", "fast, not a number"})
  void badSpeedsNameTheRange(String speed, String why) {
    CommandRun run = cause("--speed-kmh", speed);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--speed-kmh").contains(why);
  }
}
