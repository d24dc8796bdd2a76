package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class WingCommandTest {
  private static final String WING =
      """
      area_cm2: 1500
      span_mm: 900
      root_chord_mm: 215
      tip_chord_mm: 60
      section: naca2412
      """;

  /** The ideal flat wing has factor 1; a lattice's wake integral may fall short of it by this. */
  private static final double LATTICE = 0.01;

  private static CommandRun wing(String... options) {
    String[] words = new String[options.length + 2];
    words[0] = "wing";
    words[1] = "-";
    System.arraycopy(options, 0, words, 2, options.length);
    return CommandRun.withInput(WING, words);
  }

  @Test
  void printsADocument() {
    JsonNode document = Documents.of(wing("--json"), "wing");
    assertThat(document.get("points")).hasSize(21);
    assertThat(document.get("immersion_mm").isNull()).isTrue();
    assertThat(document.get("speed_kmh").asDouble()).isEqualTo(25);
    assertThat(document.get("lift_slope_per_rad").asDouble()).isBetween(3.0, 2 * Math.PI);
    assertThat(document.get("induced_drag_factor").asDouble()).isGreaterThan(1 - LATTICE);
    assertThat(document.get("cl_max").asDouble()).isBetween(0.8, 1.6);
  }

  @Test
  void nearTheSurfaceItLiftsLessAndDragsMore() {
    JsonNode deep = Documents.of(wing("--json"), "wing");
    JsonNode near = Documents.of(wing("--immersion-mm", "150", "--json"), "wing");
    assertThat(near.get("immersion_mm").asDouble()).isEqualTo(150);
    assertThat(near.get("lift_slope_per_rad").asDouble())
        .isLessThan(deep.get("lift_slope_per_rad").asDouble());
    assertThat(near.get("induced_drag_factor").asDouble())
        .isGreaterThan(deep.get("induced_drag_factor").asDouble());
  }

  @Test
  void withoutFrictionOnlyInducedDragIsLeft() {
    JsonNode document = Documents.of(wing("--inviscid", "--json"), "wing");
    assertThat(document.get("cl_max").isNull()).isTrue();
    double aspectRatio = 0.9 * 0.9 / 0.15;
    JsonNode point = document.get("points").get(9);
    double ideal = Math.pow(point.get("cl").asDouble(), 2) / (Math.PI * aspectRatio);
    // Taper and twist-free shape lie within a tenth of the ideal loading.
    assertThat(point.get("cd").asDouble()).isCloseTo(ideal, within(0.1 * ideal));
    double viscous = Documents.of(wing("--json"), "wing").get("points").get(9).get("cd").asDouble();
    assertThat(viscous).isGreaterThan(point.get("cd").asDouble());
  }

  @Test
  void printsATableAndCsv() {
    assertThat(wing().out()).contains("in deep water").contains("induced drag factor");
    assertThat(wing("--csv").outLines()).hasSize(22);
  }

  @ParameterizedTest
  @CsvSource({
    "--speed-kmh, 0, from 1 to 100 km/h",
    "--speed-kmh, 101, from 1 to 100 km/h",
    "--immersion-mm, 0, from 10 to 10000",
    "--immersion-mm, -450, from 10 to 10000",
    "--temperature-c, 60, from -2 to 40",
    "--salinity-g-kg, 80, from 0 to 42",
    "--step-deg, -1, above 0 degrees",
  })
  void badOptionsNameOptionAndRange(String option, String value, String why) {
    CommandRun run = wing(option, value);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(option).contains(why);
  }

  @Test
  void allBadOptionsAreReportedAtOnce() {
    CommandRun run =
        wing("--immersion-mm", "1", "--speed-kmh", "0", "--temperature-c", "99", "--step-deg", "0");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines())
        .startsWith(
            "--speed-kmh must be from 1 to 100 km/h, was 0 km/h.",
            "--immersion-mm must be from 10 to 10000 mm, was 1 mm.",
            "--step-deg must be above 0 degrees, was 0 degrees.",
            "--temperature-c must be from -2 to 40 °C, was 99 °C.")
        .hasSize(5);
  }

  @Test
  void everyProblemOfAFileIsNamed() {
    CommandRun run =
        CommandRun.withInput(
            "area_cm2: -1\nspan_mm: 900\nroot_chord_mm: 215\ntip_chord_mm: 60\n"
                + "section: naca2412\nspann: 3\n",
            "wing",
            "-");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines())
        .hasSize(2)
        .anySatisfy(line -> assertThat(line).startsWith("standard input:1: ").contains("area_cm2"))
        .anySatisfy(line -> assertThat(line).startsWith("standard input:6: ").contains("spann"));
  }
}
