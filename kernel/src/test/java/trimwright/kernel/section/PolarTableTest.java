package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PolarTableTest {
  private static final double ROUNDING = 1e-12;

  private static PolarTable table;
  private static final List<Double> SHARES = new ArrayList<>();

  @BeforeAll
  static void build() {
    table =
        PolarTable.build(
                NacaShape.parse("2412").outline(80),
                PolarTable.Settings.USUAL,
                share -> {
                  SHARES.add(share);
                  return true;
                })
            .orElseThrow();
  }

  @Test
  void progressIsToldAfterEachPolarAndEndsAtOne() {
    assertThat(SHARES).isSorted().hasSize(16).endsWith(1.0);
  }

  @Test
  void aStoppedBuildGivesNothing() {
    assertThat(
            PolarTable.build(
                NacaShape.parse("0012").outline(80), PolarTable.Settings.USUAL, share -> false))
        .isEmpty();
  }

  /** Nothing is invented in silence: every point is counted as one of three. */
  @Test
  void everyPointIsCountedOnce() {
    PolarRow.Counts counts = table.counts();
    assertThat(counts.computed() + counts.bridged() + counts.extended()).isEqualTo(16 * 33);
    assertThat(counts.bridged()).isLessThan(16 * 33 / 10);
    assertThat(counts.computed()).isGreaterThan(16 * 33 * 3 / 4);
  }

  /** The same at each angle, between Reynolds numbers and angles by the less sure neighbour. */
  @Test
  void everyPointTellsHowItCameAbout() {
    double[] logs = table.numbers().logReynolds();
    double[] angles = table.numbers().angles();
    int[] kinds = table.numbers().kinds();
    int bridged = 0;
    for (Finish finish : Finish.values()) {
      for (int r = 0; r < logs.length; r++) {
        int from = (finish.ordinal() * logs.length + r) * angles.length;
        PolarRow row = table.at(Math.exp(logs[r]), finish);
        for (int a = 0; a < angles.length; a++) {
          PointKind own = PointKind.values()[kinds[from + a]];
          bridged += own == PointKind.BRIDGED ? 1 : 0;
          assertThat(row.kind(angles[a])).isEqualTo(own);
          if (a > 0) {
            PointKind before = PointKind.values()[kinds[from + a - 1]];
            assertThat(row.kind(0.5 * (angles[a] + angles[a - 1]))).isEqualTo(own.or(before));
          }
          if (r > 0) {
            PointKind slower = PointKind.values()[kinds[from - angles.length + a]];
            PolarRow between = table.at(Math.exp(0.5 * (logs[r] + logs[r - 1])), finish);
            assertThat(between.kind(angles[a])).isEqualTo(own.or(slower));
          }
        }
      }
    }
    assertThat(bridged).isEqualTo(table.counts().bridged());
  }

  @Test
  void aKindOutsideTheThreeIsRefused() {
    PolarTable.Numbers numbers = table.numbers();
    int[] kinds = numbers.kinds();
    kinds[5] = 3;
    PolarTable.Numbers wrong =
        new PolarTable.Numbers(numbers.angles(), numbers.logReynolds(), numbers.values(), kinds);
    assertThatThrownBy(() -> PolarTable.of(wrong))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a point's kind is 0 to 2, was 3");
  }

  @Test
  void itsNumbersMakeTheSameTable() {
    PolarTable.Numbers numbers = table.numbers();
    PolarTable again = PolarTable.of(numbers);
    for (Finish finish : Finish.values()) {
      for (double reynolds : new double[] {1e5, 3.3e5, 1e6, 9e6}) {
        PolarRow one = table.at(reynolds, finish);
        PolarRow two = again.at(reynolds, finish);
        for (double angle = -0.3; angle < 0.4; angle += 0.011) {
          assertThat(two.lift(angle)).isEqualTo(one.lift(angle));
          assertThat(two.drag(angle)).isEqualTo(one.drag(angle));
          assertThat(two.moment(angle)).isEqualTo(one.moment(angle));
          assertThat(two.minimumPressure(angle)).isEqualTo(one.minimumPressure(angle));
        }
      }
    }
    assertThat(again.counts()).isEqualTo(table.counts());
  }

  @Test
  void numbersThatDoNotFitAreRefused() {
    PolarTable.Numbers numbers = table.numbers();
    PolarTable.Numbers cut =
        new PolarTable.Numbers(
            numbers.angles(), numbers.logReynolds(), new double[7], numbers.kinds());
    assertThatThrownBy(() -> PolarTable.of(cut))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cannot hold 7 values");
  }

  @Test
  void itIsWhatTheSweepGivesAtItsOwnReynoldsNumbers() {
    double[] angles = new double[33];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = Math.toRadians(-12 + i);
    }
    ViscousSurface surface = ViscousSurface.of(NacaShape.parse("2412").outline(80));
    PolarRow row = PolarSweep.run(surface, angles, 5e6, PolarTable.Settings.USUAL.disturbance(), 1);
    PolarRow known = table.at(5e6, Finish.CLEAN);
    assertThat(known.lift(0.05)).isCloseTo(row.lift(0.05), within(ROUNDING * 100));
    assertThat(known.drag(0.05)).isCloseTo(row.drag(0.05), within(ROUNDING * 100));
  }

  /** What every section does: less drag and more lift with more speed, scuffs cost drag. */
  @Test
  void speedHelpsAndScuffsHurt() {
    double before = 0;
    for (double reynolds : new double[] {2e5, 4e5, 8e5, 2e6, 5e6}) {
      PolarRow clean = table.at(reynolds, Finish.CLEAN);
      PolarRow scuffed = table.at(reynolds, Finish.SCUFFED);
      assertThat(clean.maximumLift()).isGreaterThan(before);
      before = clean.maximumLift();
      assertThat(scuffed.minimumDrag()).isGreaterThan(1.1 * clean.minimumDrag());
      assertThat(clean.zeroLiftAngle()).isBetween(Math.toRadians(-2.5), Math.toRadians(-1.7));
    }
  }
}
