package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class SheetCommandTest {
  private static final String TEXT = DemoCases.find("light-carver").orElseThrow().text();

  @TempDir private Path folder;

  @Test
  void writesOnePdfAndSaysSo() throws Exception {
    Path pdf = folder.resolve("my.pdf");
    JsonNode document =
        Documents.of(
            CommandRun.withInput(
                TEXT, "sheet", "-", "--pdf", pdf.toString(), "--paper", "LETTER", "--json"),
            "sheet");
    assertThat(document.get("pages").asInt()).isEqualTo(1);
    assertThat(document.get("speed_kmh").asDouble()).isEqualTo(29);
    assertThat(document.get("file").asString()).isEqualTo(pdf.toString());
    assertThat(new String(Files.readAllBytes(pdf), 0, 5)).isEqualTo("%PDF-");
    try (var inside = Files.list(folder)) {
      assertThat(inside).containsExactly(pdf);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "--paper, a5, neither a4 nor letter",
    "--units, feet, neither metric nor imperial",
    "--date, 2026-02-30, not a day of the calendar",
    "--date, tomorrow, like 2026-05-31",
    "--speed-kmh, 0, from 1 to 100 km/h",
    "--speed-kmh, fast, not a number"
  })
  void badOptionsSayWhatWouldBeRight(String option, String word, String why) throws Exception {
    Path pdf = folder.resolve("my.pdf");
    CommandRun run =
        CommandRun.withInput(TEXT, "sheet", "-", "--pdf", pdf.toString(), option, word);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(option).contains(why);
    assertThat(pdf).doesNotExist();
  }

  @Test
  void theFileIsNeeded() {
    CommandRun run = CommandRun.withInput(TEXT, "sheet", "-");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.err()).contains("--pdf");
  }

  @Test
  void whatWasReadIsNeverReplaced() throws Exception {
    Path file = Files.writeString(folder.resolve("my.yaml"), TEXT);
    CommandRun run = CommandRun.of("sheet", file.toString(), "--pdf", file.toString());
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.err()).contains("This is a file that is read");
    assertThat(file).hasContent(TEXT);
  }

  @Test
  void aBadCaseLeavesNoFile() {
    Path pdf = folder.resolve("my.pdf");
    CommandRun run = CommandRun.withInput("rider: 5", "sheet", "-", "--pdf", pdf.toString());
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(pdf).doesNotExist();
  }
}
