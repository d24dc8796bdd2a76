package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

class HelpTest {
  /** Shorter would hardly say what an option is for. */
  private static final int LEAST_WORDS = 3;

  static Stream<Map.Entry<String, CommandLine>> commands() {
    return commandLine().getSubcommands().entrySet().stream();
  }

  static CommandLine commandLine() {
    return CommandLineEntry.commandLine(
        new Console(
            InputStream.nullInputStream(),
            new PrintWriter(new StringWriter()),
            new PrintWriter(new StringWriter()),
            start -> {
              throw new AssertionError();
            }));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyOptionIsExplained(Map.Entry<String, CommandLine> command) {
    CommandSpec spec = command.getValue().getCommandSpec();
    for (OptionSpec option : spec.options()) {
      assertThat(String.join(" ", option.description()).split(" "))
          .as(command.getKey() + " " + option.longestName())
          .hasSizeGreaterThanOrEqualTo(LEAST_WORDS);
    }
    for (PositionalParamSpec parameter : spec.positionalParameters()) {
      assertThat(String.join(" ", parameter.description()).split(" "))
          .as(command.getKey() + " " + parameter.paramLabel())
          .hasSizeGreaterThanOrEqualTo(LEAST_WORDS);
    }
  }

  @ParameterizedTest
  @MethodSource("commands")
  void helpGivesAnExampleOfTheCommand(Map.Entry<String, CommandLine> command) {
    CommandRun run = CommandRun.of(command.getKey(), "--help");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Usage: ./run " + command.getKey())
        .containsPattern("Examples?:\\R  \\./run " + command.getKey());
  }
}
