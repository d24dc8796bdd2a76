package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.WingFile;
import trimwright.exchange.read.WingReader;
import trimwright.exchange.write.PolarRow;
import trimwright.exchange.write.WingTable;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

class WingStudyTest {
  private static final Water WATER = WaterModel.at(288.15, 0);
  private static final double SPEED = 7;

  /** The largest lift is found by halving the angle down to a thousandth of a degree. */
  private static final double SEARCH = 1e-3;

  private static final WingFile WING =
      WingReader.read(
              "{area_cm2: 1500, span_mm: 900, root_chord_mm: 215, tip_chord_mm: 60,"
                  + " section: naca2412}",
              SectionFiles.NONE)
          .findValue()
          .orElseThrow();

  @Test
  void geometryAndQuestionStandInTheTable() {
    WingTable table = table(OptionalDouble.of(0.4), false);
    assertThat(table.digest()).isEqualTo(WING.digest());
    assertThat(table.area()).isEqualTo(WING.shape().area());
    assertThat(table.immersion()).hasValue(0.4);
    assertThat(table.rows()).hasSize(5);
  }

  @Test
  void largestLiftIsWhereTheFirstStripStalls() {
    WingStudy study = WingStudy.of(WING, OptionalDouble.empty(), false);
    double largest =
        study.table(AngleRange.degrees(0, 0, 1), SPEED, WATER).maximumLift().orElseThrow();
    WingTable fine = study.table(AngleRange.degrees(0, 20, 0.05), SPEED, WATER);
    double lastAttached =
        fine.rows().stream()
            .filter(PolarRow::converged)
            .mapToDouble(PolarRow::lift)
            .max()
            .orElseThrow();
    double step = fine.liftSlope() * Math.toRadians(0.05);
    assertThat(largest).isBetween(lastAttached - SEARCH, lastAttached + step + SEARCH);
  }

  @Test
  void withoutFrictionNothingStalls() {
    WingTable table = table(OptionalDouble.empty(), true);
    assertThat(table.maximumLift()).isEmpty();
    assertThat(table.rows()).allMatch(PolarRow::converged);
  }

  @Test
  void liftVanishesAtTheZeroLiftAngle() {
    WingTable table = table(OptionalDouble.empty(), true);
    double zero = Math.toDegrees(table.zeroLiftAngle());
    WingTable there =
        WingStudy.of(WING, OptionalDouble.empty(), true)
            .table(AngleRange.degrees(zero, zero, 1), SPEED, WATER);
    assertThat(there.rows().get(0).lift()).isCloseTo(0, within(1e-9));
  }

  private static WingTable table(OptionalDouble immersion, boolean inviscid) {
    return WingStudy.of(WING, immersion, inviscid)
        .table(AngleRange.degrees(-2, 6, 2), SPEED, WATER);
  }
}
