package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

/**
 * The page of plausible figures shows what the program computes. With {@code
 * -Dtrimwright.write.documents=true} its table is written anew; read the page's text after that.
 */
class PlausibilityPageTest {
  private static final Path PAGE = Path.of("..", "docs", "plausibility.md");

  /** Marks the second way to a case's figures. */
  private static final String FITTED = ", fitted sections";

  @TempDir private Path cache;

  @Test
  void theTableOfDemoCasesIsUpToDate() throws IOException {
    List<String> lines = Files.readAllLines(PAGE);
    List<String> renewed =
        lines.stream()
            .map(
                line ->
                    DemoCases.list().stream()
                        .filter(d -> line.startsWith("| " + d.id()))
                        .findFirst()
                        .map(d -> row(d, line.contains(FITTED)))
                        .orElse(line))
            .toList();
    if (Boolean.getBoolean("trimwright.write.documents")) {
      Files.write(PAGE, renewed);
      return;
    }
    assertThat(lines).isEqualTo(renewed);
    assertThat(
            lines.stream()
                .filter(
                    l ->
                        DemoCases.list().stream()
                            .map(DemoCase::id)
                            .anyMatch(id -> l.startsWith("| " + id))))
        .hasSize(2 * DemoCases.list().size());
  }

  private String row(DemoCase demo, boolean fitted) {
    CaseFile read = CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow();
    // The made-up cases' polars come with the program: nothing is built.
    SectionPolars polars = new SectionPolars(Optional.of(cache));
    CaseFile file = fitted ? read : LayeredCase.find(read, polars).orElseThrow();
    double wished = file.rideCase().rider().wishedSpeed();
    CaseStudy study = CaseStudy.of(file);
    Curve curve = study.curve(SpeedRange.kmh(10, 40, 1));
    TrimPoint p = study.trim(wished).findPoint().orElseThrow();
    String level =
        curve.levelSpeed().isPresent()
            ? String.format(Locale.ROOT, "%.1f", kmh(curve.levelSpeed().getAsDouble()))
            : "never";
    return String.format(
        Locale.ROOT,
        "| %s | %.1f | %s | %.0f | %.1f | %.1f | %.2f | %.2f | %.0f | %.0f | %.1f |",
        demo.id() + (fitted ? FITTED : ""),
        kmh(curve.rideableWindow().orElseThrow().from()),
        level,
        kmh(wished),
        Math.round(10 * Unit.DEGREE.fromSi(p.pitch())) / 10.0 + 0.0,
        Unit.DEGREE.fromSi(p.frontWingAngleOfAttack()),
        p.frontWingLiftCoefficient(),
        p.footShare(),
        p.thrust(),
        p.electricPower().orElseThrow(),
        Unit.DEGREE.fromSi(p.stallMargin()));
  }

  private static double kmh(double speed) {
    return Unit.KILOMETRE_PER_HOUR.fromSi(speed);
  }
}
