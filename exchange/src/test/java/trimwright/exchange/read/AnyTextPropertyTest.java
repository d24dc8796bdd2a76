package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.seed.RunSeed;

/** Whatever comes in: the readers answer, and never throw. */
class AnyTextPropertyTest {
  /** Pieces that mean something to YAML, to the schema or to number readers. */
  private static final List<String> PIECES =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ": ",
          ", ",
          "- ",
          "? ",
          "| ",
          "> ",
          "&a ",
          "*a ",
          "!!map ",
          "!x ",
          "<<: ",
          "'",
          "\"",
          "\\",
          "\n",
          "\r",
          "\t",
          "  ",
          "#",
          "%YAML 1.1\n",
          "---\n",
          "...\n",
          "null",
          "~",
          "true",
          ".nan",
          "-.inf",
          "1e400",
          "-0",
          "0x1F",
          "0o7",
          "99999999999999999999",
          "1_000",
          "é",
          "\u0000",
          "\u2028",
          "\uFEFF",
          "\uD83D",
          "\uFFFF",
          "\u0085",
          "stations: ",
          "section: ",
          "{file: x.dat}",
          "setup: ",
          "format: ",
          "@",
          "`");

  @Property(tries = 500, seed = RunSeed.VALUE)
  void takesRandomText(@ForAll @Size(max = 400) String text) {
    answers(text);
  }

  @Property(tries = 500, seed = RunSeed.VALUE)
  void takesRandomBytes(@ForAll @Size(max = 400) byte[] bytes) {
    answers(new String(bytes, StandardCharsets.ISO_8859_1));
  }

  @Property(tries = 500, seed = RunSeed.VALUE)
  void takesRandomPieces(@ForAll @Size(max = 40) List<@IntRange(min = 0, max = 50) Integer> picks) {
    StringBuilder text = new StringBuilder();
    picks.forEach(pick -> text.append(PIECES.get(pick % PIECES.size())));
    answers(text.toString());
  }

  @Property(tries = 500, seed = RunSeed.VALUE)
  void takesChangedDemoCases(
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 1_000_000) Integer> places,
      @ForAll @Size(min = 6, max = 6) List<@IntRange(min = 0, max = 50) Integer> picks,
      @ForAll @IntRange(min = 0, max = 12) int cut) {
    DemoCase demo = DemoCases.list().get(which);
    StringBuilder text = new StringBuilder(demo.text());
    for (int i = 0; i < places.size(); i++) {
      int at = places.get(i) % text.length();
      text.replace(at, Math.min(text.length(), at + cut), PIECES.get(picks.get(i) % PIECES.size()));
    }
    answers(text.toString());
  }

  @Property(tries = 300, seed = RunSeed.VALUE)
  void takesRandomValuesOfKnownKeys(
      @ForAll @IntRange(min = 0, max = 3) int which,
      @ForAll @IntRange(min = 0, max = 10_000) int line,
      @ForAll @IntRange(min = 0, max = 50) int pick) {
    List<String> lines = DemoCases.list().get(which).text().lines().toList();
    int at = line % lines.size();
    String changed =
        lines
            .get(at)
            .replaceFirst(":.*", Matcher.quoteReplacement(": " + PIECES.get(pick % PIECES.size())));
    List<String> all = new ArrayList<>(lines);
    all.set(at, changed);
    answers(String.join("\n", all));
  }

  private static void answers(String text) {
    SectionFiles files = name -> Optional.of(text);
    Reading<CaseFile> ride = CaseReader.read(text, files);
    assertThat(ride.findValue().isPresent()).isEqualTo(ride.problems().isEmpty());
    Reading<WingFile> wing = WingReader.read(text, files);
    assertThat(wing.findValue().isPresent()).isEqualTo(wing.problems().isEmpty());
    assertThat(SectionText.read("x", text)).isNotNull();
    ride.problems()
        .forEach(
            p -> {
              assertThat(p.message()).isNotBlank().doesNotContain("\n").matches("(?s).*[.?]");
              assertThat(p.line().orElse(1)).isPositive();
            });
  }
}
