package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.exchange.write.PolarRow;
import trimwright.exchange.write.SectionTable;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

class SectionStudyTest {
  private static final double REYNOLDS = 600_000;
  private static final Section SECTION = Sections.naca("naca2412");

  @Test
  void rowsHoldBetweenTheLiftLimitsAndNotBeyond() {
    SectionTable table = table(Finish.CLEAN, false);
    List<PolarRow> rows = table.rows();
    assertThat(rows).hasSize(91);
    double highest = table.maximumLift().orElseThrow();
    Polar polar = SECTION.polar(REYNOLDS, Finish.CLEAN);
    double lowest = polar.minimumLift();
    for (PolarRow row : rows) {
      boolean inside =
          row.angleOfAttack() <= polar.angleOfMaximumLift()
              && row.angleOfAttack() >= polar.angleOfMinimumLift();
      assertThat(row.converged()).isEqualTo(inside);
      assertThat(row.lift()).isBetween(lowest, highest);
    }
    assertThat(rows.get(0).converged()).isFalse();
    assertThat(rows.get(90).converged()).isFalse();
  }

  @Test
  void withoutFrictionThereIsNoDragAndNoLimit() {
    SectionTable table = table(Finish.CLEAN, true);
    assertThat(table.maximumLift()).isEmpty();
    assertThat(table.rows()).allSatisfy(row -> assertThat(row.drag()).isZero());
    assertThat(table.rows()).allMatch(PolarRow::converged);
    assertThat(table.liftSlope()).isGreaterThan(table(Finish.CLEAN, false).liftSlope());
  }

  @Test
  void digestTellsWhatWasComputed() {
    assertThat(table(Finish.CLEAN, false).digest())
        .isEqualTo(table(Finish.CLEAN, false).digest())
        .isNotEqualTo(table(Finish.SCUFFED, false).digest())
        .isNotEqualTo(table(Finish.CLEAN, true).digest());
  }

  private static SectionTable table(Finish finish, boolean inviscid) {
    return SectionStudy.of(SECTION, finish, inviscid)
        .table(AngleRange.degrees(-45, 45, 1), REYNOLDS);
  }
}
