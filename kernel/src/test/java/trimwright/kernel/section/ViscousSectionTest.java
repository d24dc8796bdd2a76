package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ViscousSectionTest {
  private static final double[] REYNOLDS = {2e5, 7e5, 3e6};

  private static PolarTable table;
  private static Section section;

  @BeforeAll
  static void build() {
    Section fitted = Sections.naca("naca2412");
    table =
        PolarTable.build(fitted.shape(), PolarTable.Settings.USUAL, share -> true).orElseThrow();
    section = new ViscousSection(fitted, table);
  }

  @Test
  void itIsTheTableBetweenItsLimits() {
    for (double reynolds : REYNOLDS) {
      PolarRow row = table.at(reynolds, Finish.CLEAN);
      Polar polar = section.polar(reynolds, Finish.CLEAN);
      for (double degrees : new double[] {-3, 0, 2.5, 6}) {
        double angle = Math.toRadians(degrees);
        assertThat(polar.lift(angle)).isEqualTo(row.lift(angle));
        assertThat(polar.dragAt(angle)).isEqualTo(row.drag(angle));
        assertThat(polar.moment(angle)).isEqualTo(row.moment(angle));
        assertThat(polar.drag(row.lift(angle))).isCloseTo(row.drag(angle), within(1e-8));
      }
    }
  }

  @Test
  void liftGoesOnWithItsSlopeThroughBothStalls() {
    for (double reynolds : REYNOLDS) {
      for (Finish finish : Finish.values()) {
        Polar polar = section.polar(reynolds, finish);
        double step = 1e-7;
        for (double stall : new double[] {polar.angleOfMaximumLift(), polar.angleOfMinimumLift()}) {
          assertThat(polar.lift(stall + step)).isCloseTo(polar.lift(stall - step), within(1e-5));
          assertThat(polar.slope(stall + step)).isCloseTo(polar.slope(stall - step), within(1e-3));
          assertThat(polar.dragAt(stall + step))
              .isCloseTo(polar.dragAt(stall - step), within(1e-5));
          assertThat(polar.moment(stall + step))
              .isCloseTo(polar.moment(stall - step), within(1e-5));
        }
        assertThat(polar.maximumLift()).isBetween(0.8, 2.0);
        assertThat(polar.minimumLift()).isBetween(-1.3, -0.3);
        assertThat(polar.dragAt(Math.toRadians(60))).isGreaterThan(0.8);
      }
    }
  }

  @Test
  void itsStraightLineIsThatOfACamberedSection() {
    assertThat(section.zeroLiftAngle()).isBetween(Math.toRadians(-2.4), Math.toRadians(-1.8));
    assertThat(section.liftSlope()).isBetween(5.7, 6.5);
    assertThat(section.momentAtZeroLift()).isBetween(-0.06, -0.04);
    assertThat(section.aerodynamicCentre()).isBetween(0.22, 0.28);
    assertThat(section.at(0.05, 1e6, Finish.CLEAN).attached()).isTrue();
    assertThat(section.at(0.5, 1e6, Finish.CLEAN).attached()).isFalse();
  }
}
