package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

/** A wing turned by its sections alone beside one whose lattice is turned. */
class TurnedWingPropertyTest {
  private static final double TURN = Math.toRadians(2);
  private static final double REYNOLDS_PER_METRE = 5e6;

  /** Panels that stay where they were, and the sine of an angle taken for the angle [1]. */
  private static final double PANELS = 0.01;

  private static CoupledFlow flow(double incidence, double turn, double pitch) {
    Section section = Sections.naca("2412");
    WingShape shape =
        new WingShape(
            0.9,
            List.of(
                new Station(0, 0.2, 0, 0, 0, section), new Station(1, 0.12, -0.03, 0, 0, section)));
    PlacedWing wing = new PlacedWing(shape, 0, 0, incidence, LatticeSize.FRONT_WING);
    Lattice lattice = new Lattice(List.of(wing), false);
    SurfaceResponse response =
        SystemResponse.tabulate(
            lattice,
            p -> Double.NaN,
            new double[] {pitch - 1e-3, pitch, pitch + 1e-3, pitch + 2e-3});
    ProfileForces sections = new ProfileForces(wing, Finish.CLEAN);
    StripCoupling coupling = StripCoupling.of(List.of(sections.at(REYNOLDS_PER_METRE)));
    return coupling.withTurn(0, turn).solve(response, pitch);
  }

  @Test
  void loadsAreThoseOfALatticeThatTurns() {
    for (double degrees = -2; degrees <= 8; degrees += 2) {
      double pitch = Math.toRadians(degrees);
      WingLoad turned = flow(0, TURN, pitch).wings().get(0);
      WingLoad built = flow(TURN, 0, pitch).wings().get(0);
      double lift = built.force().up();
      double drag = built.force().forward();
      assertThat(turned.force().up()).isCloseTo(lift, within(PANELS * Math.abs(lift)));
      assertThat(turned.force().forward()).isCloseTo(drag, within(PANELS * Math.abs(drag)));
      for (int k = 0; k < built.stripLift().length; k++) {
        double own = built.stripLift()[k];
        assertThat(turned.stripLift()[k]).isCloseTo(own, within(PANELS * Math.abs(own) + 1e-3));
        // Angles of the turned count from the chord line before the turn.
        assertThat(turned.stripAngle()[k] + TURN)
            .isCloseTo(built.stripAngle()[k], within(Math.toRadians(0.1)));
      }
    }
  }

  @Test
  void noTurnIsTheSameCoupling() {
    Section section = Sections.naca("0009");
    WingShape shape =
        new WingShape(
            0.4,
            List.of(new Station(0, 0.1, 0, 0, 0, section), new Station(1, 0.1, 0, 0, 0, section)));
    PlacedWing wing = new PlacedWing(shape, 0, 0, 0, LatticeSize.STABILIZER);
    StripCoupling plain =
        StripCoupling.of(List.of(new ProfileForces(wing, Finish.CLEAN).at(REYNOLDS_PER_METRE)));
    assertThat(plain.withTurn(0, 0)).isSameAs(plain);
  }
}
