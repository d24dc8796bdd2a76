package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class WaterCommandTest {
  /** Published tables print density to 0.01 kg/m³; the command is only asked to pass it on. */
  private static final double DENSITY_PRINTED = 0.01;

  @Test
  void printsADocument() {
    JsonNode document =
        Documents.of(
            CommandRun.of("water", "--temperature-c", "15", "--salinity-g-kg", "0", "--json"),
            "water");
    // ITTC 7.5-02-01-03 (2011), fresh water at 15 °C: 999.1026 kg/m³.
    assertThat(document.get("density_kg_m3").asDouble()).isCloseTo(999.10, within(DENSITY_PRINTED));
    assertThat(document.get("temperature_c").asDouble()).isEqualTo(15);
  }

  @Test
  void printsATable() {
    CommandRun run = CommandRun.of("water");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("15.0").contains("35.0").contains("kg/m³");
  }

  @Test
  void printsCsv() {
    CommandRun run = CommandRun.of("water", "--csv");
    assertThat(run.status()).isZero();
    assertThat(run.outLines()).hasSize(2);
    assertThat(run.outLines().get(0)).contains("density_kg_m3");
  }

  @Test
  void coldestAndWarmestBelongToTheRange() {
    for (String temperature : new String[] {"-2", "40"}) {
      for (String salinity : new String[] {"0", "42"}) {
        CommandRun run =
            CommandRun.of("water", "--temperature-c", temperature, "--salinity-g-kg", salinity);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "--temperature-c, -2.1, from -2 to 40",
    "--temperature-c, 41, from -2 to 40",
    "--temperature-c, NaN, not a number",
    "--temperature-c, Infinity, not a number",
    "--temperature-c, 1e999, not a number",
    "--temperature-c, 0x1p3, not a number",
    "--temperature-c, warm, not a number",
    "--temperature-c, '15,5', not a number",
    "--salinity-g-kg, -1, from 0 to 42",
    "--salinity-g-kg, 80, from 0 to 42",
  })
  void badValuesNameTheOptionAndTheRange(String option, String value, String why) {
    CommandRun run = CommandRun.of("water", option, value);
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(option).contains(value).contains(why);
  }

  @Test
  void allBadOptionsAreReportedAtOnce() {
    CommandRun run = CommandRun.of("water", "--temperature-c", "99", "--salinity-g-kg", "80");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.errLines())
        .startsWith(
            "--temperature-c must be from -2 to 40 °C, was 99 °C.",
            "--salinity-g-kg must be from 0 to 42 g/kg, was 80 g/kg.")
        .hasSize(3);
  }

  @Test
  void allWordsThatAreNoNumbersAreReportedAtOnce() {
    CommandRun run = CommandRun.of("water", "--temperature-c", "warm", "--salinity-g-kg", "salty");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(3);
    assertThat(run.errLines().get(0)).contains("--temperature-c").contains("'warm'");
    assertThat(run.errLines().get(1)).contains("--salinity-g-kg").contains("'salty'");
  }

  @Test
  void oneFormAtATime() {
    CommandRun run = CommandRun.of("water", "--json", "--csv");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--json").contains("--csv").contains("mutually exclusive");
  }
}
