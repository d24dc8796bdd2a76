package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.kernel.layer.Disturbance;

class ViscousFlowPropertyTest {
  private static final double CLEAN = 1;

  private static ViscousFlow flow(String code, double reynolds, int panels) {
    ViscousSurface surface = ViscousSurface.of(NacaShape.parse(code).outline(80), panels);
    return new ViscousFlow(surface, reynolds, Disturbance.TUNNEL, CLEAN, CLEAN);
  }

  private static ViscousPoint at(ViscousFlow flow, double degrees) {
    return flow.solve(Math.toRadians(degrees));
  }

  /** The first steps agree to 1e-4 of the mass defects; what is left of that in the forces. */
  private static final double AGREED = 2e-5;

  @ParameterizedTest
  @ValueSource(doubles = {0, 3, 6})
  void aSymmetricalSectionUpsideDownIsTheSameFlow(double degrees) {
    ViscousPoint up = at(flow("0012", 1e6, 60), degrees);
    ViscousPoint down = at(flow("0012", 1e6, 60), -degrees);
    assertThat(up.converged()).isTrue();
    assertThat(down.converged()).isTrue();
    assertThat(down.lift()).isCloseTo(-up.lift(), within(AGREED));
    assertThat(down.moment()).isCloseTo(-up.moment(), within(AGREED));
    assertThat(down.drag()).isCloseTo(up.drag(), within(AGREED));
    assertThat(down.transitionBelow()).isCloseTo(up.transitionAbove(), within(1e-3));
  }

  /** Layers take lift away, less and less as they grow thinner. */
  @Test
  void thinLayersLeaveTheLiftOfInviscidFlow() {
    double inviscid = PanelMethod.of(NacaShape.parse("2412").outline(120)).lift(Math.toRadians(2));
    double before = 1;
    double first = 0;
    for (double reynolds : new double[] {1e6, 2e6, 5e6, 1e7}) {
      ViscousSurface surface = ViscousSurface.of(NacaShape.parse("2412").outline(80));
      ViscousFlow flow = new ViscousFlow(surface, reynolds, Disturbance.TUNNEL, 0.03, 0.03);
      ViscousPoint point = flow.solve(Math.toRadians(2));
      assertThat(point.converged()).isTrue();
      double loss = 1 - point.lift() / inviscid;
      assertThat(loss).isBetween(0.0, before);
      before = loss;
      first = Math.max(first, loss);
    }
    assertThat(before).isLessThan(0.7 * first);
  }

  /** Lift and drag settle as panels are added: half the panels cost no more than 3 %. */
  @ParameterizedTest
  @CsvSource({"0012, 3", "4412, 2", "23012, 4"})
  void morePanelsChangeLittle(String code, double degrees) {
    ViscousPoint coarse = at(flow(code, 3e6, 40), degrees);
    ViscousPoint usual = at(flow(code, 3e6, 60), degrees);
    ViscousPoint fine = at(flow(code, 3e6, 100), degrees);
    assertThat(usual.lift()).isCloseTo(fine.lift(), within(0.01 * fine.lift()));
    assertThat(usual.drag()).isCloseTo(fine.drag(), within(0.02 * fine.drag()));
    assertThat(coarse.lift()).isCloseTo(fine.lift(), within(0.03 * fine.lift()));
    assertThat(coarse.drag()).isCloseTo(fine.drag(), within(0.04 * fine.drag()));
  }

  @Test
  void transitionForcedNearTheNoseCostsDragAndLift() {
    ViscousSurface surface = ViscousSurface.of(NacaShape.parse("2412").outline(80));
    double angle = Math.toRadians(4);
    ViscousPoint clean = new ViscousFlow(surface, 4e6, Disturbance.TUNNEL, 1, 1).solve(angle);
    ViscousPoint forced =
        new ViscousFlow(surface, 4e6, Disturbance.TUNNEL, 0.05, 0.05).solve(angle);
    assertThat(forced.transitionAbove()).isCloseTo(0.05, within(0.001));
    assertThat(forced.transitionBelow()).isCloseTo(0.05, within(0.001));
    assertThat(forced.drag()).isGreaterThan(1.15 * clean.drag());
    ViscousPoint above = new ViscousFlow(surface, 4e6, Disturbance.TUNNEL, 0.05, 1).solve(angle);
    assertThat(above.lift()).isLessThan(clean.lift());
  }
}
