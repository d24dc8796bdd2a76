package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

/** The page of plausible figures shows what the program computes. */
class PlausibilityPageTest {
  private static final Path PAGE = Path.of("..", "docs", "plausibility.md");

  @Test
  void theTableOfDemoCasesIsUpToDate() throws IOException {
    List<String[]> rows =
        Files.readAllLines(PAGE).stream()
            .filter(line -> DemoCases.list().stream().anyMatch(d -> line.startsWith("| " + d.id())))
            .map(line -> Arrays.stream(line.split("\\|")).map(String::strip).toArray(String[]::new))
            .toList();
    assertThat(rows).hasSameSizeAs(DemoCases.list());
    for (String[] row : rows) {
      CaseFile file =
          CaseReader.read(DemoCases.find(row[1]).orElseThrow().text(), SectionFiles.NONE)
              .findValue()
              .orElseThrow();
      double wished = file.rideCase().rider().wishedSpeed();
      CaseStudy study = CaseStudy.of(file);
      Curve curve = study.curve(SpeedRange.kmh(10, 40, 1));
      TrimPoint p = study.trim(wished).findPoint().orElseThrow();
      assertThat(kmh(curve.rideableWindow().orElseThrow().from()))
          .isCloseTo(shown(row[2]), half(1));
      if (row[3].equals("never")) {
        assertThat(curve.levelSpeed()).isEmpty();
      } else {
        assertThat(kmh(curve.levelSpeed().orElseThrow())).isCloseTo(shown(row[3]), half(1));
      }
      assertThat(kmh(wished)).isCloseTo(shown(row[4]), half(0));
      assertThat(Unit.DEGREE.fromSi(p.pitch())).isCloseTo(shown(row[5]), half(1));
      assertThat(Unit.DEGREE.fromSi(p.frontWingAngleOfAttack())).isCloseTo(shown(row[6]), half(1));
      assertThat(p.frontWingLiftCoefficient()).isCloseTo(shown(row[7]), half(2));
      assertThat(p.footShare()).isCloseTo(shown(row[8]), half(2));
      assertThat(p.thrust()).isCloseTo(shown(row[9]), half(0));
      assertThat(p.electricPower().orElseThrow()).isCloseTo(shown(row[10]), half(0));
      assertThat(Unit.DEGREE.fromSi(p.stallMargin())).isCloseTo(shown(row[11]), half(1));
    }
  }

  private static double kmh(double speed) {
    return Unit.KILOMETRE_PER_HOUR.fromSi(speed);
  }

  private static double shown(String cell) {
    return Double.parseDouble(cell);
  }

  /** Half of the last printed digit. */
  private static org.assertj.core.data.Offset<Double> half(int digits) {
    return within(0.5001 * Math.pow(10, -digits));
  }
}
