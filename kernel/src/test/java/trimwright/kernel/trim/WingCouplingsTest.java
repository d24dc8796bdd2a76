package trimwright.kernel.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.CoupledFlow;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.ProfileForces;
import trimwright.kernel.surface.StripCoupling;
import trimwright.kernel.surface.SurfaceResponse;

class WingCouplingsTest {
  private static final double KMH = 1 / 3.6;

  private final Craft craft = new Craft(ExampleCase.PLAIN.build());
  private final SurfaceResponse response = Responses.tabulated(craft);
  private final Couplings couplings = WingCouplings.of(craft, response);

  private CoupledFlow still(double speed, double pitch) {
    double perMetre = speed / craft.rideCase().water().kinematicViscosity();
    return StripCoupling.of(
            List.of(
                new ProfileForces(
                        craft.wings().get(0), craft.rideCase().setup().frontWing().finish())
                    .at(perMetre),
                new ProfileForces(
                        craft.wings().get(1), craft.rideCase().setup().stabilizer().finish())
                    .at(perMetre)))
        .solve(response, pitch);
  }

  private CoupledFlow with(double speed, double pitch) {
    return couplings.at(speed).at(pitch).solve(response, pitch);
  }

  private static double drag(CoupledFlow flow) {
    return -flow.wings().get(0).force().forward() - flow.wings().get(1).force().forward();
  }

  private static double lift(CoupledFlow flow, int wing) {
    return flow.wings().get(wing).force().up();
  }

  /** The slower, the more the waves take: drag per lift grows against the same without waves. */
  @Test
  void wavesCostMoreTheSlower() {
    double pitch = Math.toRadians(6);
    double before = Double.POSITIVE_INFINITY;
    for (double kmh : new double[] {10, 14, 18, 24, 36}) {
      CoupledFlow waves = with(kmh * KMH, pitch);
      CoupledFlow still = still(kmh * KMH, pitch);
      double more =
          drag(waves) / (lift(waves, 0) * lift(waves, 0))
              - drag(still) / (lift(still, 0) * lift(still, 0));
      assertThat(more).as("%s km/h", kmh).isPositive().isLessThan(before);
      before = more;
    }
  }

  /** Clear of the wake and fast, nothing else flows at the wings. */
  @Test
  void fastAndClearOfTheWakeOnlyTheLatticeIsLeft() {
    double pitch = Math.toRadians(8);
    CoupledFlow fast = with(25, pitch);
    CoupledFlow still = still(25, pitch);
    for (int wing = 0; wing < 2; wing++) {
      assertThat(lift(fast, wing))
          .isCloseTo(lift(still, wing), within(2e-3 * Math.abs(lift(still, wing))));
    }
  }

  /** In the wake the stabilizer has a few per cent less, at the pitch that carries it there. */
  @Test
  void theWakeCostsTheStabilizerAFewPerCent() {
    double least = 1;
    double at = 0;
    for (double degrees = -4; degrees < 8; degrees += 0.25) {
      double pitch = Math.toRadians(degrees);
      double share = lift(with(20, pitch), 1) / lift(still(20, pitch), 1);
      // Where the stabilizer has next to no lift a share says nothing.
      if (Math.abs(lift(still(20, pitch), 1)) > 2e-3 && share < least) {
        least = share;
        at = degrees;
      }
    }
    assertThat(least).isBetween(0.88, 0.98);
    assertThat(at).isBetween(-1.0, 4.0);
  }

  /** No speed is refused, however slow, and lattice and sections agree. */
  @Test
  void everySpeedHasItsWaves() {
    for (double speed : new double[] {0.3, 1, 1.5, 2.5, 5, 15, 40}) {
      for (double degrees : new double[] {-3, 0, 4, 9}) {
        assertThat(with(speed, Math.toRadians(degrees)).converged())
            .as("%s m/s, %s degrees", speed, degrees)
            .isTrue();
      }
    }
  }
}
