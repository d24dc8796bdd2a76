package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import trimwright.exchange.write.Codes;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;

/**
 * Runs every {@code ./run} line of the manual and holds what it prints against the manual. A line
 * of three dots stands for lines left out.
 *
 * <p>When results have changed on purpose, let this test renew the manual and look at the
 * difference before keeping it: {@code mvn -pl command -am test -Dtest=DocumentationTest
 * -Dsurefire.failIfNoSpecifiedTests=false -Dtrimwright.manual=write}.
 */
class DocumentationTest {
  private static final Path MANUAL = Path.of("..", "docs", "commands.md");

  /**
   * Part by which a figure in the manual may lie off: a reader takes its size from it and not its
   * last digit, and a small refinement of the model should not need a new manual.
   */
  private static final double NEAR = 0.03;

  /** The same for small figures, in units of their last printed digit. */
  private static final double LAST_DIGITS = 2;

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?(E-?\\d+)?");

  private static final String LEFT_OUT = "...";

  /** Files that the manual names; they live in a folder of their own here. */
  private static final Pattern FILE = Pattern.compile("[a-z]+\\.(yaml|svg|csv|json|pdf|stl)");

  /** How far long work is stands on standard error. */
  private static final Pattern PROGRESS = Pattern.compile(".+: \\d+( of \\d+)?");

  private static final Pattern EXAMPLE =
      Pattern.compile(
          "```sh\\n(\\./run [^\\n]+)\\n```\\n(?:\\n```(?:text|json|csv)\\n(.*?)```\\n)?",
          Pattern.DOTALL);

  private static final Pattern SHOWN_FILE =
      Pattern.compile("`([a-z]+\\.yaml)`:\n\n```yaml\n(.*?)```\n", Pattern.DOTALL);

  @TempDir private Path folder;

  @Test
  void everyCommandOfTheManualDoesWhatItSays() throws Exception {
    String manual = Files.readString(MANUAL);
    writeFilesShownIn(manual);
    boolean write = "write".equals(System.getProperty("trimwright.manual"));
    StringBuilder renewed = new StringBuilder();
    Matcher example = EXAMPLE.matcher(manual);
    int count = 0;
    while (example.find()) {
      count++;
      String line = example.group(1);
      String printed = run(line);
      Optional<String> shown = Optional.ofNullable(example.group(2));
      if (write && shown.isPresent()) {
        String fresh = example.group().replace(shown.get(), shorten(printed, shown.get()));
        example.appendReplacement(renewed, Matcher.quoteReplacement(fresh));
      } else if (shown.isPresent()) {
        assertSame(line, shorten(printed, shown.get()), shown.get());
      }
    }
    assertThat(count).isEqualTo(manual.split("(?m)^\\./run ", -1).length - 1).isPositive();
    if (write) {
      Files.writeString(MANUAL, example.appendTail(renewed).toString());
    }
  }

  @Test
  void theManualNamesEveryCommandAndOption() throws Exception {
    String manual = Files.readString(MANUAL);
    CommandLine root = HelpTest.commandLine();
    root.getSubcommands()
        .forEach(
            (name, command) -> {
              assertThat(manual).contains("\n## " + name);
              String chapter = manual.substring(manual.indexOf("\n## " + name)).split("\n## ")[1];
              command.getCommandSpec().options().stream()
                  .filter(option -> !option.longestName().equals("--help"))
                  .forEach(
                      option -> assertThat(chapter).as(name).contains("`" + option.longestName()));
            });
  }

  @Test
  void theManualExplainsEveryOutcomeAndLimit() throws Exception {
    String manual = Files.readString(MANUAL);
    for (Limit limit : Limit.values()) {
      assertThat(manual).contains("\n| `" + Codes.of(limit) + "` | ");
    }
    for (NoTrimReason reason : NoTrimReason.values()) {
      assertThat(manual).contains("\n| `" + Codes.of(reason) + "` | ");
    }
  }

  private void writeFilesShownIn(String manual) throws Exception {
    Matcher shown = SHOWN_FILE.matcher(manual);
    while (shown.find()) {
      Files.writeString(folder.resolve(shown.group(1)), shown.group(2));
    }
  }

  private String run(String line) throws Exception {
    List<String> words = new ArrayList<>(Arrays.asList(line.split(" +")));
    words.remove(0);
    Path target = null;
    if (words.contains(">")) {
      int at = words.indexOf(">");
      target = folder.resolve(words.get(at + 1));
      words = new ArrayList<>(words.subList(0, at));
    }
    words.replaceAll(word -> FILE.matcher(word).matches() ? folder.resolve(word).toString() : word);
    CommandRun run = CommandRun.of(words.toArray(String[]::new));
    assertThat(run.err().lines().filter(said -> !PROGRESS.matcher(said).matches()))
        .as(line)
        .isEmpty();
    assertThat(run.status()).as(line).isZero();
    if (target != null) {
      Files.writeString(target, run.out());
    }
    return run.out().replace(folder + "/", "");
  }

  private static void assertSame(String line, String printed, String shown) {
    String what = line + " (see this test's comment for how to renew the manual)";
    assertThat(form(printed)).as(what).isEqualTo(form(shown));
    if (shown.startsWith("{")) {
      return; // A document has residuals and sums in it whose digits mean nothing.
    }
    List<BigDecimal> numbers = numbers(printed);
    List<BigDecimal> expected = numbers(shown);
    for (int i = 0; i < expected.size(); i++) {
      BigDecimal figure = expected.get(i);
      double play =
          Math.max(NEAR * figure.abs().doubleValue(), LAST_DIGITS * figure.ulp().doubleValue());
      assertThat(numbers.get(i).doubleValue())
          .as(what)
          .isCloseTo(figure.doubleValue(), within(play));
    }
  }

  /** The text without its figures and the spaces that line them up. */
  private static String form(String text) {
    return NUMBER
        .matcher(text.replaceAll("[0-9a-f]{64}", "#"))
        .replaceAll("#")
        .replaceAll(" +", " ");
  }

  private static List<BigDecimal> numbers(String text) {
    return NUMBER.matcher(text).results().map(found -> new BigDecimal(found.group())).toList();
  }

  /** The printed lines, with those left out that the shown text leaves out. */
  private static String shorten(String printed, String shown) {
    List<String> pattern = shown.lines().toList();
    int gap = pattern.indexOf(LEFT_OUT);
    List<String> lines = printed.lines().toList();
    int after = pattern.size() - gap - 1;
    if (gap < 0 || lines.size() < gap + after) {
      return printed;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, gap));
    kept.add(LEFT_OUT);
    kept.addAll(lines.subList(lines.size() - after, lines.size()));
    return String.join("\n", kept) + "\n";
  }
}
