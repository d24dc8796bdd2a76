package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import trimwright.exchange.write.PolarRow;
import trimwright.exchange.write.SectionTable;
import trimwright.exchange.write.SectionWriter;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.PointKind;
import trimwright.kernel.section.Polar;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.section.ViscousSection;

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

  /** A point without agreement is marked under its own angle in every form, and does not hold. */
  @Test
  void pointsThatWereBridgedOrExtendedAreMarkedWhereTheyStand() {
    SectionTable table =
        SectionStudy.of(
                new ViscousSection(SECTION, withKindsAt(Map.of(7, 1, 12, 2))), Finish.CLEAN, false)
            .table(AngleRange.degrees(-4, 12, 1), REYNOLDS);
    for (PolarRow row : table.rows()) {
      long degrees = Math.round(Math.toDegrees(row.angleOfAttack()));
      PointKind kind =
          degrees == 7
              ? PointKind.BRIDGED
              : degrees == 12 ? PointKind.EXTENDED : PointKind.COMPUTED;
      assertThat(row.kind()).as("at %d degrees", degrees).contains(kind);
      assertThat(row.converged()).isEqualTo(kind == PointKind.COMPUTED);
    }
    assertThat(SectionWriter.json(table))
        .containsOnlyOnce("\"kind\" : \"bridged\"")
        .containsOnlyOnce("\"kind\" : \"extended\"");
    assertThat(SectionWriter.csv(table)).containsPattern("\n7\\.0,.*,false,bridged\\r?\n");
    assertThat(SectionWriter.table(table))
        .containsPattern("7\\.00 .*bridged\n")
        .containsPattern("12\\.00 .*by rule\n")
        .contains("of 17 angles computed, 1 bridged between neighbours, 1 beyond by a rule");
  }

  /** A straight polar from -4 to 12 degrees with some kinds of its own, at all Reynolds numbers. */
  private static PolarTable withKindsAt(Map<Integer, Integer> kindAt) {
    double[] angles = IntStream.rangeClosed(-4, 12).mapToDouble(Math::toRadians).toArray();
    double[] logs = DoubleStream.of(1e5, 4e5, 1e6, 5e6).map(Math::log).toArray();
    int rows = Finish.values().length * logs.length;
    double[] values = new double[rows * 4 * angles.length];
    int[] kinds = new int[rows * angles.length];
    for (int r = 0; r < rows; r++) {
      for (int a = 0; a < angles.length; a++) {
        int at = r * 4 * angles.length + a;
        values[at] = 6 * angles[a];
        values[at + angles.length] = 0.01;
        values[at + 3 * angles.length] = -1;
        kinds[r * angles.length + a] = kindAt.getOrDefault(a - 4, 0);
      }
    }
    return PolarTable.of(new PolarTable.Numbers(angles, logs, values, kinds));
  }

  private static SectionTable table(Finish finish, boolean inviscid) {
    return SectionStudy.of(SECTION, finish, inviscid)
        .table(AngleRange.degrees(-45, 45, 1), REYNOLDS);
  }
}
