package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.seed.RunSeed;

class PanelMethodPropertyTest {
  private static final int PANELS = 40;

  /**
   * Rounding of a dense system of 81 unknowns whose condition number reaches 1e6 for thin sections.
   */
  private static final double ROUNDING = 1e-8;

  @Property(tries = 60, seed = RunSeed.VALUE)
  void symmetricalSectionsTurnTheirLiftWithTheAngle(
      @ForAll @IntRange(min = 1, max = 30) int percent,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double angle) {
    PanelMethod flow =
        PanelMethod.of(new NacaShape("s", percent / 100.0, MeanLine.STRAIGHT).outline(PANELS));
    assertThat(flow.zeroLiftAngle()).isCloseTo(0, within(ROUNDING));
    assertThat(flow.momentAtZeroLift()).isCloseTo(0, within(ROUNDING));
    assertThat(flow.lift(-angle)).isCloseTo(-flow.lift(angle), within(ROUNDING));
    assertThat(flow.quarterChordMoment(-angle))
        .isCloseTo(-flow.quarterChordMoment(angle), within(ROUNDING));
    // Thick sections crowd the suction, so that the bound is generous; it is never above the
    // stagnation value.
    assertThat(flow.minimumPressure(angle))
        .isLessThan(0)
        .isCloseTo(flow.minimumPressure(-angle), within(ROUNDING * 1e4));
  }

  @Property(tries = 40, seed = RunSeed.VALUE)
  void upsideDownIsTheSameFlowMirrored(
      @ForAll @IntRange(min = 4, max = 24) int percent,
      @ForAll @Scale(4) @DoubleRange(min = 0.002, max = 0.08) double camber,
      @ForAll @DoubleRange(min = 0.2, max = 0.7) double position) {
    PanelMethod up = cambered(percent, camber, position);
    PanelMethod down = cambered(percent, -camber, position);
    assertThat(down.zeroLiftAngle()).isCloseTo(-up.zeroLiftAngle(), within(ROUNDING));
    assertThat(down.momentAtZeroLift()).isCloseTo(-up.momentAtZeroLift(), within(ROUNDING));
    assertThat(down.liftSlope()).isCloseTo(up.liftSlope(), within(ROUNDING));
    assertThat(down.aerodynamicCentre()).isCloseTo(up.aerodynamicCentre(), within(ROUNDING));
    assertThat(up.zeroLiftAngle()).isNegative();
    assertThat(up.momentAtZeroLift()).isNegative();
  }

  @Property(tries = 40, seed = RunSeed.VALUE)
  void angleOfIsTheInverseOfLift(
      @ForAll @IntRange(min = 4, max = 24) int percent,
      @ForAll @DoubleRange(min = -2, max = 2) double lift) {
    PanelMethod flow = cambered(percent, 0.02, 0.4);
    assertThat(flow.lift(flow.angleOf(lift))).isCloseTo(lift, within(ROUNDING));
    assertThat(flow.lift(flow.angleOf(100))).isCloseTo(flow.liftSlope(), within(ROUNDING));
  }

  private static PanelMethod cambered(int percent, double camber, double position) {
    return PanelMethod.of(
        new NacaShape("c", percent / 100.0, new TwoParabolas(camber, position)).outline(PANELS));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0012", "2412", "4415", "23012", "0006", "6409", "0030"})
  void convergesWithTheSquareOfThePanelLength(String code) {
    NacaShape shape = NacaShape.parse(code);
    PanelMethod coarse = PanelMethod.of(shape.outline(40));
    PanelMethod middle = PanelMethod.of(shape.outline(80));
    PanelMethod fine = PanelMethod.of(shape.outline(160));
    double order =
        Math.log(
                (coarse.liftSlope() - middle.liftSlope()) / (middle.liftSlope() - fine.liftSlope()))
            / Math.log(2);
    assertThat(order).isBetween(1.7, 2.3);
    // Second order: what is left at 80 panels a side is a third of the step from 80 to 160.
    double left = Math.abs(middle.liftSlope() - fine.liftSlope()) * 4 / 3 / fine.liftSlope();
    assertThat(left).isLessThan(3e-4);
  }
}
