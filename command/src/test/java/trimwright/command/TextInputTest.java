package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.exchange.demo.DemoCases;

/** Files that are not what they should be, for every command that reads one. */
class TextInputTest {
  @TempDir private Path folder;

  private static List<String> words(String command, String file) {
    return command.equals("cause")
        ? List.of(command, file, "--speed-kmh", "20")
        : List.of(command, file);
  }

  private void assertRefused(String command, String file, String why) {
    CommandRun run = CommandRun.of(words(command, file).toArray(String[]::new));
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).startsWith(file).contains(why);
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void missingFile(String command) {
    assertRefused(command, folder.resolve("absent.yaml").toString(), "no such file");
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void folderInsteadOfFile(String command) {
    assertRefused(command, folder.toString(), "folder");
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void fileBelowAFile(String command) throws Exception {
    Path file = Files.writeString(folder.resolve("a.yaml"), "a: 1");
    CommandRun run =
        CommandRun.of(words(command, file.resolve("b.yaml").toString()).toArray(String[]::new));
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void binaryFile(String command) throws Exception {
    Path file = folder.resolve("picture.yaml");
    Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, (byte) 0xff});
    assertRefused(command, file.toString(), "not a text file");
    Files.write(file, "water: 1\0".getBytes(StandardCharsets.UTF_8));
    assertRefused(command, file.toString(), "not a text file");
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void overlongFile(String command) throws Exception {
    Path file = folder.resolve("long.yaml");
    Files.writeString(file, "#".repeat(TextInput.LARGEST_BYTES + 1));
    assertRefused(command, file.toString(), "longer than 1024 kB");
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void emptyFileAndEmptyName(String command) throws Exception {
    Path file = Files.writeString(folder.resolve("empty.yaml"), "");
    CommandRun run = CommandRun.of(words(command, file.toString()).toArray(String[]::new));
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith(file.toString());
    CommandRun nameless = CommandRun.of(words(command, "").toArray(String[]::new));
    assertThat(nameless.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(nameless.err()).contains("name is empty");
  }

  @ParameterizedTest
  @ValueSource(strings = {"curve", "cause", "wing", "section"})
  void noFileAtAll(String command) {
    CommandRun run = CommandRun.of(command);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("Missing required");
  }

  @Test
  void closedStandardInput() {
    StringWriter err = new StringWriter();
    InputStream closed =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("Bad file descriptor");
          }
        };
    int status =
        CommandLineEntry.run(
            new String[] {"curve", "-"},
            closed,
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            start -> {
              throw new AssertionError("no shop is wanted here");
            });
    assertThat(status).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(err.toString()).startsWith("Standard input is closed").hasLineCount(1);
  }

  @Test
  void aMarkAtTheStartDoesNotMatter() throws Exception {
    String text = DemoCases.find("light-carver").orElseThrow().text();
    Path plain = Files.writeString(folder.resolve("plain.yaml"), text);
    Path marked = Files.writeString(folder.resolve("marked.yaml"), "\uFEFF" + text);
    assertThat(CommandRun.of("curve", marked.toString(), "--json"))
        .isEqualTo(CommandRun.of("curve", plain.toString(), "--json"));
  }
}
