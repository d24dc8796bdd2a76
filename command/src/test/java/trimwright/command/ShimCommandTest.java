package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.StlReader;
import trimwright.kernel.wedge.SolidCheck;

class ShimCommandTest {
  /** Documents carry ten digits. */
  private static final double WRITTEN = 1e-8;

  @TempDir private Path folder;

  private static CommandRun shim(String... more) {
    List<String> words =
        new ArrayList<>(List.of("shim", "--angle-deg", "1.5", "--bolt-spacing-mm", "60"));
    words.addAll(List.of(more));
    return CommandRun.of(words.toArray(String[]::new));
  }

  @Test
  void writesABodyAndSaysSo() throws Exception {
    Path stl = folder.resolve("my.stl");
    JsonNode document = Documents.of(shim("--stl", stl.toString(), "--json"), "shim");
    assertThat(document.get("file").asString()).isEqualTo(stl.toString());
    assertThat(document.get("leading_edge").asString()).isEqualTo("up");
    assertThat(document.get("bolt_difference_mm").asDouble())
        .isCloseTo(60 * Math.tan(Math.toRadians(1.5)), within(WRITTEN));
    assertThat(document.get("thick_bolt_mm").asDouble() - document.get("thin_bolt_mm").asDouble())
        .isCloseTo(60 * Math.tan(Math.toRadians(1.5)), within(WRITTEN));
    SolidCheck check = SolidCheck.of(StlReader.read(Files.readAllBytes(stl)));
    assertThat(check.isSolid()).isTrue();
    assertThat(document.get("body").get("triangles").asInt()).isEqualTo(check.triangles());
    assertThat(document.get("body").get("volume_mm3").asDouble())
        .isCloseTo(check.volume() * 1e9, within(1e-5));
    try (var inside = Files.list(folder)) {
      assertThat(inside).containsExactly(stl);
    }
  }

  @ParameterizedTest
  @CsvSource({"1.5, above, front", "1.5, below, back", "-1.5, above, back", "-1.5, below, front"})
  void saysWhichWayItGoesInAndWhichBoltGrowsMore(String angle, String mounted, String end) {
    JsonNode document =
        Documents.of(
            CommandRun.of(
                "shim",
                "--angle-deg",
                angle,
                "--bolt-spacing-mm",
                "60",
                "--mounted",
                mounted,
                "--bolt-length-mm",
                "20",
                "--json"),
            "shim");
    assertThat(document.get("fits").size()).isEqualTo(1);
    JsonNode fit = document.get("fits").get(0);
    assertThat(fit.get("mounted").asString()).isEqualTo(mounted);
    assertThat(fit.get("thick_end").asString()).isEqualTo(end);
    double front = fit.get("front_bolt_longer_mm").asDouble();
    double back = fit.get("back_bolt_longer_mm").asDouble();
    assertThat(front > back).isEqualTo(end.equals("front"));
    assertThat(fit.get("front_bolt_mm").asDouble()).isCloseTo(20 + front, within(WRITTEN));
    assertThat(fit.get("back_bolt_mm").asDouble()).isCloseTo(20 + back, within(WRITTEN));
  }

  @Test
  void withoutASideItSpeaksOfBoth() {
    JsonNode document = Documents.of(shim("--json"), "shim");
    assertThat(document.get("fits").size()).isEqualTo(2);
    assertThat(document.get("file").isNull()).isTrue();
    assertThat(document.get("bolt_length_mm").isNull()).isTrue();
    CommandRun run = shim();
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("depends on where the stabilizer is bolted")
        .contains("on top of the fuselage", "thick end goes to the front")
        .contains("under the fuselage", "thick end goes to the back")
        .contains("None of this says that a setup is safe.")
        .doesNotContain("Written to");
  }

  @ParameterizedTest
  @CsvSource({
    "--angle-deg, 0, from 0.1 to 6 degrees",
    "--angle-deg, 6.1, from 0.1 to 6 degrees",
    "--angle-deg, -7, from 0.1 to 6 degrees",
    "--angle-deg, steep, not a number",
    "--bolt-spacing-mm, 9, from 10 to 200 mm",
    "--bolt-spacing-mm, 201, from 10 to 200 mm",
    "--bolt-diameter-mm, 1, from 2 to 12 mm",
    "--bolt-diameter-mm, 13, from 2 to 12 mm",
    "--bolt-length-mm, 4, from 5 to 150 mm",
    "--length-mm, 69, 'from 69.5 to 300 mm for bolts of 6 mm, 60 mm apart'",
    "--length-mm, 301, from 69.5 to 300 mm",
    "--width-mm, 9, from 9.5 to 120 mm for bolts of 6 mm",
    "--width-mm, 121, from 9.5 to 120 mm",
    "--least-thickness-mm, 0.3, from 0.4 to 10 mm",
    "--least-thickness-mm, 11, from 0.4 to 10 mm",
    "--mounted, beside, neither above nor below",
  })
  void badOptionsNameTheRange(String option, String value, String why) {
    Path stl = folder.resolve("my.stl");
    List<String> words = new ArrayList<>(List.of("shim", "--stl", stl.toString()));
    if (!option.equals("--angle-deg")) {
      words.addAll(List.of("--angle-deg", "1"));
    }
    if (!option.equals("--bolt-spacing-mm")) {
      words.addAll(List.of("--bolt-spacing-mm", "60"));
    }
    words.addAll(List.of(option, value));
    CommandRun run = CommandRun.of(words.toArray(String[]::new));
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(option).contains(value).contains(why);
    assertThat(stl).doesNotExist();
  }

  @Test
  void allBadOptionsAreReportedAtOnce() {
    CommandRun run = CommandRun.of("shim", "--angle-deg", "0", "--bolt-spacing-mm", "5");
    assertThat(run.errLines())
        .startsWith(
            "--angle-deg must be from 0.1 to 6 degrees, or the same below zero, was 0 degrees.",
            "--bolt-spacing-mm must be from 10 to 200 mm, was 5 mm.")
        .hasSize(3);
  }

  @Test
  void holesThatWouldMeetAreRefused() {
    CommandRun run =
        CommandRun.of(
            "shim", "--angle-deg", "1", "--bolt-spacing-mm", "13", "--bolt-diameter-mm", "12");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.err())
        .contains("--bolt-spacing-mm must be from 14 to 200 mm for bolts of 12 mm, was 13 mm.");
  }

  @Test
  void angleAndSpacingAreNeeded() {
    CommandRun run = CommandRun.of("shim");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.err()).contains("--angle-deg").contains("--bolt-spacing-mm");
  }

  @Test
  void aFileThatCannotBeWrittenIsSaidAndNothingPrinted() {
    CommandRun run = shim("--stl", folder.resolve("none").resolve("my.stl").toString());
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--stl").contains("The folder for it does not exist");
  }

  @Test
  void endsOfTheRangesAreInside() {
    for (String angle : List.of("0.1", "-0.1", "6", "-6")) {
      for (String spacing : List.of("10", "200")) {
        assertThat(
                CommandRun.of(
                        "shim",
                        "--angle-deg",
                        angle,
                        "--bolt-spacing-mm",
                        spacing,
                        "--bolt-diameter-mm",
                        "2")
                    .status())
            .isZero();
      }
    }
  }
}
