package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class CurveCommandTest {
  @TempDir private Path folder;
  private Path file;
  private String text;

  @BeforeEach
  void writeCase() throws Exception {
    text = DemoCases.find("light-carver").orElseThrow().text();
    file = Files.writeString(folder.resolve("my.yaml"), text);
  }

  private CommandRun curve(String... options) {
    String[] words = new String[options.length + 2];
    words[0] = "curve";
    words[1] = file.toString();
    System.arraycopy(options, 0, words, 2, options.length);
    return CommandRun.of(words);
  }

  @Test
  void printsADocument() {
    JsonNode document = Documents.of(curve("--json"), "curve");
    JsonNode points = document.get("points");
    assertThat(points).hasSize(31);
    for (int i = 0; i < 31; i++) {
      assertThat(points.get(i).get("speed_kmh").asDouble()).isEqualTo(10.0 + i);
    }
    assertThat(points.get(30).get("outcome").asString()).isNotEqualTo("too_slow");
  }

  @Test
  void readsStandardInput() {
    assertThat(CommandRun.withInput(text, "curve", "-", "--json")).isEqualTo(curve("--json"));
  }

  @Test
  void printsATable() {
    CommandRun run = curve();
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("km/h");
  }

  @Test
  void printsCsv() {
    CommandRun run = curve("--csv", "--from-kmh", "20", "--to-kmh", "22");
    assertThat(run.status()).isZero();
    assertThat(run.outLines()).hasSize(4);
    assertThat(run.outLines().get(0)).startsWith("speed_kmh,outcome,pitch_deg");
    assertThat(run.outLines().get(1)).startsWith("20");
  }

  @Test
  void writesAPictureBesideTheDocument() throws Exception {
    Path picture = folder.resolve("my.svg");
    CommandRun run = curve("--json", "--svg", picture.toString());
    Documents.of(run, "curve");
    assertThat(Files.readString(picture)).startsWith("<").contains("<svg").endsWith("</svg>\n");
    try (var inside = Files.list(folder)) {
      assertThat(inside).containsExactlyInAnyOrder(file, picture);
    }
  }

  @Test
  void aPictureThatCannotBeWrittenIsBadInput() {
    CommandRun run = curve("--svg", folder.toString());
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("--svg").contains("folder");
  }

  @Test
  void aPictureNeverReplacesWhatWasRead() throws Exception {
    Files.writeString(folder.resolve("lens.dat"), outline());
    String changed = text.replaceFirst("section: *\\w+", "section: lens.dat");
    Files.writeString(file, changed);
    Files.createSymbolicLink(folder.resolve("link.svg"), file);
    Files.createLink(folder.resolve("twin.svg"), file);
    Files.createDirectory(folder.resolve("inner"));
    for (String name :
        new String[] {"my.yaml", "inner/../my.yaml", "link.svg", "twin.svg", "lens.dat"}) {
      CommandRun run = curve("--svg", folder + "/" + name);
      assertThat(run.status()).as(name).isEqualTo(CommandLineEntry.BAD_INPUT);
      assertThat(run.out()).isEmpty();
      assertThat(run.errLines()).hasSize(1);
      assertThat(run.err()).contains("--svg").contains("is read");
    }
    assertThat(file).hasContent(changed);
    assertThat(folder.resolve("lens.dat")).hasContent(outline());
  }

  @Test
  void allBadOptionsAreReportedAtOnce() {
    CommandRun run = curve("--from-kmh", "0", "--to-kmh", "200", "--step-kmh", "-1");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines())
        .startsWith(
            "--from-kmh must be from 1 to 100 km/h, was 0 km/h.",
            "--to-kmh must be from 1 to 100 km/h, was 200 km/h.",
            "--step-kmh must be above 0 km/h, was -1 km/h.")
        .hasSize(4);
  }

  @ParameterizedTest
  @CsvSource({
    "--from-kmh, 0, from 1 to 100 km/h",
    "--from-kmh, -5, from 1 to 100 km/h",
    "--to-kmh, 101, from 1 to 100 km/h",
    "--to-kmh, 9, must not be below --from-kmh 10 km/h",
    "--step-kmh, 0, above 0 km/h",
    "--step-kmh, 0.001, more than 2000 values",
    "--step-kmh, one, not a number",
  })
  void badOptionsNameOptionAndRange(String option, String value, String why) {
    CommandRun run = curve(option, value);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(option).contains(why);
  }

  @Test
  void everyProblemIsALineWithItsPlace() throws Exception {
    Files.writeString(
        file,
        text.replaceAll("salinity_g_kg: *[0-9.]+", "salinity_g_kg: 80")
            .replaceAll("(?m)^( *)(rider: *\\{?\\s*)?mass_kg: *[0-9.]+", "$1$2mass_kg: -82"));
    CommandRun run = curve("--json");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines())
        .hasSizeGreaterThanOrEqualTo(2)
        .allSatisfy(line -> assertThat(line).matches(".*my\\.yaml:\\d+: \\S.*\\."))
        .anySatisfy(line -> assertThat(line).contains("salinity_g_kg").contains("80"));
  }

  @Test
  void outlinesLieBesideTheCaseAndNowhereElse() throws Exception {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    String outline = outline();
    Files.writeString(folder.resolve("lens.dat"), outline);
    Files.writeString(inner.resolve("lens.dat"), outline);
    Files.createSymbolicLink(inner.resolve("link.dat"), folder.resolve("lens.dat"));
    assertThat(curveWithSection(inner, "lens.dat").status()).isZero();
    for (String name :
        new String[] {
          "../lens.dat", folder.resolve("lens.dat").toString(), "link.dat", "absent.dat"
        }) {
      CommandRun run = curveWithSection(inner, name);
      assertThat(run.status()).as(name).isEqualTo(CommandLineEntry.BAD_INPUT);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).as(name).contains("section");
    }
  }

  /** What was put right in an outline is said where a case names it, beside the result. */
  @Test
  void repairsOfAnOutlineAreSaidOnce() throws Exception {
    List<String> points = outline().lines().toList();
    List<String> twice = new ArrayList<>(points);
    twice.add(points.size() / 2, points.get(points.size() / 2));
    Files.writeString(folder.resolve("twice.dat"), String.join("\n", twice));
    CommandRun run = curveWithSection(folder, "twice.dat");
    assertThat(run.status()).isZero();
    assertThat(run.errLines())
        .filteredOn(line -> line.startsWith("Coordinates file"))
        .containsExactly("Coordinates file twice.dat: One point was repeated and left out.");
    Files.writeString(folder.resolve("whole.dat"), outline());
    assertThat(curveWithSection(folder, "whole.dat").err()).doesNotContain("Coordinates file");
  }

  private CommandRun curveWithSection(Path where, String name) throws Exception {
    String changed = text.replaceFirst("section: *\\w+", "section: " + name);
    assertThat(changed).isNotEqualTo(text);
    Path other = Files.writeString(where.resolve("other.yaml"), changed);
    return CommandRun.of("curve", other.toString(), "--from-kmh", "20", "--to-kmh", "20");
  }

  private static String outline() {
    StringBuilder lines = new StringBuilder();
    int steps = 60;
    for (int i = -steps; i <= steps; i++) {
      double x = 0.5 * (1 + Math.cos(Math.PI * (1 - Math.abs(i) / (double) steps)));
      double y = (0.02 - Math.signum(i) * 0.05) * 4 * x * (1 - x);
      lines.append(x).append(' ').append(y).append('\n');
    }
    return lines.toString();
  }
}
