package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

class LoadTablePropertyTest {
  /** Of the largest lift; past the stall its fall begins within a step of the table. */
  private static final double ATTACHED = 5e-4;

  private static final double STALLED = 5e-3;

  private static final double VISCOSITY = 1.1e-6;

  private static WingShape shape(double span, double root, double tip, Section section) {
    return new WingShape(
        span,
        List.of(
            new Station(0, root, 0, 0, 0, section),
            new Station(1, tip, -0.03, -0.02, -0.01, section)));
  }

  /** Every speed from 1 to 30 m/s, every pitch up to past the stall: look-up against solution. */
  @Test
  void looksUpWhatIsSolved() {
    List<PlacedWing> wings =
        List.of(
            new PlacedWing(
                shape(0.9, 0.21, 0.06, Sections.naca("2412")),
                0.15,
                0.02,
                0,
                LatticeSize.FRONT_WING),
            new PlacedWing(
                shape(0.42, 0.1, 0.045, Sections.naca("0009")),
                -0.56,
                0.03,
                -0.035,
                LatticeSize.STABILIZER));
    double[] pitches = new double[24];
    for (int i = 0; i < pitches.length; i++) {
      pitches[i] = Math.toRadians(-4 + 1.3 * i);
    }
    SystemResponse response =
        SystemResponse.tabulate(new Lattice(wings, false), pitch -> 0.45, pitches);
    ProfileForces front = new ProfileForces(wings.get(0), Finish.CLEAN);
    ProfileForces tail = new ProfileForces(wings.get(1), Finish.CLEAN);
    Couplings couplings =
        speed -> {
          double perMetre = speed / VISCOSITY;
          StripCoupling one = StripCoupling.of(List.of(front.at(perMetre), tail.at(perMetre)));
          return pitch -> one;
        };
    Loads loads = response.loads("these", couplings);
    assertThat(response.loads("these", couplings)).isSameAs(loads);
    assertThat(response.loads("others", couplings)).isNotSameAs(loads);
    for (double speed : new double[] {1, 1.9, 3.3, 5.1, 7.7, 13, 21, 30}) {
      SpeedLoads table = loads.at(speed);
      SpeedLoads solved = new SolvedLoads(response, couplings.at(speed));
      double stall = table.stallPitch();
      assertThat(stall).isCloseTo(solved.stallPitch(), within(1e-3));
      assertThat(table.to()).isGreaterThan(stall + Math.toRadians(2.5));
      for (double pitch = table.from(); pitch <= table.to(); pitch += 0.004) {
        double error = (pitch < stall ? ATTACHED : STALLED) * 0.12 * 1.3;
        assertThat(table.residual(pitch)).isLessThan(CoupledFlow.TOLERANCE);
        for (int w = 0; w < 2; w++) {
          WingLoad a = table.load(w, pitch);
          WingLoad b = solved.load(w, pitch);
          assertThat(a.force().up()).isCloseTo(b.force().up(), within(error));
          assertThat(a.force().forward()).isCloseTo(b.force().forward(), within(2 * error));
          assertThat(a.force().noseUp()).isCloseTo(b.force().noseUp(), within(error));
          assertThat(a.profileDrag()).isCloseTo(b.profileDrag(), within(2 * error));
          assertThat(a.stripAngle()).containsExactly(b.stripAngle(), within(5e-3));
          assertThat(a.force()).isEqualTo(table.force(w, pitch));
        }
      }
    }
  }
}
