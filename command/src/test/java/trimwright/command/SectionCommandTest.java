package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.demo.DemoCases;

class SectionCommandTest {
  /** A symmetric shape has no lift at no angle; what is left is rounding of the outline. */
  private static final double SYMMETRY = 1e-6;

  @TempDir private Path folder;

  @Test
  void printsADocument() {
    JsonNode document = Documents.of(CommandRun.of("section", "naca2412", "--json"), "section");
    assertThat(document.get("points")).hasSize(21);
    assertThat(document.get("zero_lift_angle_deg").asDouble()).isBetween(-2.5, -1.5);
    assertThat(document.get("points").get(0).get("angle_of_attack_deg").asDouble()).isEqualTo(-4);
    assertThat(document.get("points").get(20).get("converged").asBoolean()).isFalse();
  }

  @Test
  void symmetricShapeIsSymmetric() {
    JsonNode points =
        Documents.of(
                CommandRun.of(
                    "section", "NACA 0012", "--from-deg", "-5", "--to-deg", "5", "--json"),
                "section")
            .get("points");
    for (int i = 0; i < 11; i++) {
      assertThat(points.get(i).get("cl").asDouble())
          .isCloseTo(-points.get(10 - i).get("cl").asDouble(), within(SYMMETRY));
      assertThat(points.get(i).get("cd").asDouble())
          .isCloseTo(points.get(10 - i).get("cd").asDouble(), within(SYMMETRY));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"63-412", "63a412", "64(1)-212", "66,2-215 a=0.6"})
  void codeOfThe6SeriesWithoutTheWordIsNoMissingFile(String shape) {
    CommandRun run = CommandRun.of("section", shape);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .contains("SHAPE " + shape, "6-series", "coordinates as a file")
        .doesNotContain("no such file");
  }

  @Test
  void scuffedDragsMoreThanClean() {
    assertThat(dragAtZero("scuffed")).isGreaterThan(dragAtZero("clean"));
  }

  private static double dragAtZero(String finish) {
    return Documents.of(
            CommandRun.of(
                "section",
                "naca0012",
                "--finish",
                finish,
                "--from-deg",
                "0",
                "--to-deg",
                "0",
                "--json"),
            "section")
        .get("points")
        .get(0)
        .get("cd")
        .asDouble();
  }

  @Test
  void readsACoordinatesFileAndStandardInput() throws Exception {
    String outline = outline();
    Path file = Files.writeString(folder.resolve("lens.dat"), outline);
    JsonNode fromFile =
        Documents.of(
            CommandRun.of("section", file.toString(), "--fitted-sections", "--json"), "section");
    JsonNode fromInput =
        Documents.of(
            CommandRun.withInput(outline, "section", "-", "--fitted-sections", "--json"),
            "section");
    assertThat(fromInput.get("points")).isEqualTo(fromFile.get("points"));
    assertThat(fromFile.get("zero_lift_angle_deg").asDouble()).isBetween(-6.0, -0.5);
  }

  @Test
  void saysWhatItPutRightInAFile() throws Exception {
    List<String> lines = new ArrayList<>(outline().lines().toList());
    Collections.reverse(lines);
    Path file = Files.writeString(folder.resolve("back.dat"), String.join("\n", lines));
    String words = "The lower surface came first; the order was turned round.";
    JsonNode document =
        Documents.of(
            CommandRun.of("section", file.toString(), "--fitted-sections", "--json"), "section");
    assertThat(document.get("repairs").get(0).asString()).isEqualTo(words);
    assertThat(CommandRun.of("section", file.toString(), "--fitted-sections").outLines())
        .last()
        .isEqualTo(words);
    assertThat(
            Documents.of(
                    CommandRun.of("section", "naca2412", "--fitted-sections", "--json"), "section")
                .get("repairs"))
        .isEmpty();
  }

  @Test
  void computesPolarsOnceAndKeepsThem() throws Exception {
    String cache = folder.resolve("cache").toString();
    CommandRun first =
        CommandRun.of("section", "naca0011", "--cache-folder", cache, "--to-deg", "24", "--json");
    CommandRun second =
        CommandRun.of("section", "naca0011", "--cache-folder", cache, "--to-deg", "24", "--json");
    assertThat(first.errLines()).hasSize(8).last().isEqualTo("Computing polars of naca0011: 100 %");
    assertThat(second.err()).isEmpty();
    assertThat(second.out()).isEqualTo(first.out());
    JsonNode document = Documents.of(second, "section");
    assertThat(document.get("layers").get("computed").asInt()).isGreaterThan(20);
    JsonNode points = document.get("points");
    assertThat(points.get(4).get("cl").asDouble()).isCloseTo(0, within(0.01));
    assertThat(points.get(8).get("cl").asDouble()).isBetween(0.35, 0.5);
    assertThat(points.get(8).get("converged").asBoolean()).isTrue();
    assertThat(points.get(28).get("cl").isNull()).isTrue();
    assertThat(CommandRun.of("section", "naca0011", "--cache-folder", cache).out())
        .contains("boundary layers: ");
  }

  /** Polars of usual sections come with the program: none is built, nothing is kept. */
  @Test
  void casesStandOnLayersUnlessToldOtherwise() throws Exception {
    Path cache = folder.resolve("none");
    String text = DemoCases.find("light-carver").orElseThrow().text();
    String file = Files.writeString(folder.resolve("case.yaml"), text).toString();
    CommandRun layered = CommandRun.of("curve", file, "--cache-folder", cache.toString(), "--json");
    assertThat(layered.err()).isEmpty();
    assertThat(cache).doesNotExist();
    JsonNode document = Documents.of(layered, "curve");
    JsonNode fitted =
        Documents.of(CommandRun.of("curve", file, "--fitted-sections", "--json"), "curve");
    assertThat(document.get("sections").asString()).isEqualTo("layers");
    assertThat(fitted.get("sections").asString()).isEqualTo("fitted");
    for (int kmh = 18; kmh <= 34; kmh++) {
      JsonNode a = document.get("points").get(kmh - 10);
      JsonNode b = fitted.get("points").get(kmh - 10);
      // Two models of one section: nearly the same ride and never the same numbers.
      assertThat(a.get("pitch_deg").asDouble())
          .isCloseTo(b.get("pitch_deg").asDouble(), within(0.5))
          .isNotEqualTo(b.get("pitch_deg").asDouble());
    }
    JsonNode cause =
        Documents.of(CommandRun.of("cause", file, "--speed-kmh", "20", "--json"), "cause");
    assertThat(cause.get("sections").asString()).isEqualTo("layers");
  }

  /** A parabolic lens of 10 % thickness on a parabolic mean line of 2 % camber. */
  private static String outline() {
    StringBuilder text = new StringBuilder();
    int steps = 60;
    for (int i = -steps; i <= steps; i++) {
      double x = 0.5 * (1 + Math.cos(Math.PI * (1 - Math.abs(i) / (double) steps)));
      double bow = 4 * x * (1 - x);
      double y = (0.02 - Math.signum(i) * 0.05) * bow;
      text.append(String.format(Locale.ROOT, "%.6f %.6f%n", x, y));
    }
    return text.toString();
  }

  @Test
  void printsATableAndCsv() {
    assertThat(CommandRun.of("section", "naca2412").out()).contains("cp min");
    assertThat(CommandRun.of("section", "naca2412", "--csv").outLines())
        .hasSize(22)
        .first()
        .isEqualTo("angle_of_attack_deg,cl,cd,cm,cp_min,converged,kind");
  }

  @ParameterizedTest
  @ValueSource(strings = {"naca", "naca24", "naca241234", "naca99999", "naca0000"})
  void badCodesAreBadInput(String code) {
    CommandRun run = CommandRun.of("section", code);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains(code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"naca63-412", "NACA 63(1)-212", "naca64A010", "naca65-410 a=0.5"})
  void theSixSeriesIsRefusedInItsOwnWords(String code) {
    CommandRun run = CommandRun.of("section", code);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.err()).contains(code).contains("6-series").contains("coordinates as a file");
  }

  @ParameterizedTest
  @CsvSource({
    "--reynolds, 0, from 10000 to 100000000",
    "--reynolds, -5, from 10000 to 100000000",
    "--finish, dirty, neither clean nor scuffed",
    "--from-deg, -50, from -45 to 45 degrees",
    "--from-deg, 17, must not be below",
    "--to-deg, 90, from -45 to 45 degrees",
    "--step-deg, 0, above 0 degrees",
    "--step-deg, 0.0001, more than 2000 values",
  })
  void badOptionsNameOptionAndRange(String option, String value, String why) {
    CommandRun run = CommandRun.of("section", "naca2412", option, value);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("-").contains(why);
  }

  @Test
  void outsideTheLayersRangeFittedSectionsAnswerAndSaySo() throws Exception {
    CommandRun run = CommandRun.of("section", "naca2412", "--reynolds", "10000", "--json");
    assertThat(run.err()).contains("only from Reynolds number 100000 to 5000000");
    assertThat(run.out()).containsPattern("\"layers\" *: null");
    assertThat(CommandRun.of("section", "naca2412", "--fitted-sections", "--json").out())
        .containsPattern("\"layers\" *: null");
  }

  @Test
  void badOutlinesSayWhere() throws Exception {
    Path file = Files.writeString(folder.resolve("bad.dat"), "1 0\n0.5 high\n0 0\n");
    CommandRun run = CommandRun.of("section", file.toString());
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith(file + ":2: ");
  }
}
