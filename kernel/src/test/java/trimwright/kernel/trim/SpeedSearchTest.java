package trimwright.kernel.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;

class SpeedSearchTest {
  /** Width of the last bracket of a speed, with room [m/s]. */
  private static final double SPEED = 1e-4;

  /**
   * A drive that holds the least power of all speeds and next to nothing more: trim points exist on
   * some 0.1 km/h, between two steps of the sweep, with the feet even in their midst.
   */
  @Test
  void evenFeetAreFoundOnAStretchNarrowerThanAStepOfTheSweep() {
    CaseSolver plain = CaseSolver.of(ExampleCase.PLAIN.build());
    TrimPoint least = leastPower(plain);
    double place = least.footPressureAheadOfMast();
    CaseSolver weak = CaseSolver.of(with(power(least) * (1 + 2e-5), place + 0.24, place - 0.24));
    Curve curve = weak.curve(List.of(least.speed()));
    assertThat(curve.outcomes().get(0)).isInstanceOf(TrimOutcome.Trimmed.class);
    assertThat(weak.trim(least.speed() + 0.1)).isInstanceOf(TrimOutcome.NoTrim.class);
    assertThat(weak.trim(least.speed() - 0.1)).isInstanceOf(TrimOutcome.NoTrim.class);
    assertThat(curve.evenFeetSpeeds()).hasSize(1);
    assertThat(curve.evenFeetSpeeds().get(0).speed()).isCloseTo(least.speed(), within(SPEED));
  }

  /**
   * The same drive: the trim points on that stretch are inside every limit, and it is all there is.
   */
  @Test
  void aRideableStretchNarrowerThanAStepOfTheSweepIsFound() {
    CaseSolver plain = CaseSolver.of(ExampleCase.PLAIN.build());
    TrimPoint least = leastPower(plain);
    double place = least.footPressureAheadOfMast();
    CaseSolver weak = CaseSolver.of(with(power(least) * (1 + 2e-5), place + 0.24, place - 0.24));
    Curve curve = weak.curve(List.of(least.speed()));
    assertThat(curve.outcomes().get(0).findPoint().orElseThrow().brokenLimits()).isEmpty();
    assertThat(curve.rideableIntervals()).hasSize(1);
    SpeedInterval only = curve.rideableIntervals().get(0);
    assertThat(only.from()).isLessThan(least.speed());
    assertThat(only.to()).isGreaterThan(least.speed());
    assertThat(only.to() - only.from()).isLessThan(0.1);
    for (double inside : new double[] {only.from() + SPEED, only.to() - SPEED}) {
      assertThat(weak.trim(inside).findPoint().orElseThrow().brokenLimits()).isEmpty();
    }
    double beyond = 1e-3;
    assertThat(weak.trim(only.from() - beyond)).isInstanceOf(TrimOutcome.NoTrim.class);
    assertThat(weak.trim(only.to() + beyond)).isInstanceOf(TrimOutcome.NoTrim.class);
  }

  private static TrimPoint leastPower(CaseSolver solver) {
    TrimPoint least = solver.trim(4).findPoint().orElseThrow();
    for (double v = 4; v < 8; v += 0.001) {
      TrimPoint p = solver.trim(v).findPoint().orElseThrow();
      if (power(p) < power(least)) {
        least = p;
      }
    }
    return least;
  }

  private static double power(TrimPoint p) {
    return p.electricPower().orElseThrow();
  }

  private static RideCase with(double maximumPower, double frontFoot, double backFoot) {
    RideCase c = ExampleCase.PLAIN.build();
    Setup s = c.setup();
    Drive d = s.drive().orElseThrow();
    Drive weak =
        new Drive(
            d.heightAboveFuselage(),
            d.behindMast(),
            d.thrustAngle(),
            d.diameter(),
            d.length(),
            d.propellerDiameter(),
            maximumPower,
            d.efficiency(),
            d.mass(),
            d.massAboveAxis(),
            d.volume());
    Rider r = c.rider();
    Rider rider =
        new Rider(
            r.mass(),
            r.kitMass(),
            r.height(),
            r.airDragArea(),
            frontFoot,
            backFoot,
            r.wishedSpeed(),
            r.wishedFootShare(),
            r.wishedPitch());
    return new RideCase(
        c.water(),
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        rider,
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            Optional.of(weak),
            s.fuselage(),
            s.frontWing(),
            s.stabilizer(),
            s.shim()),
        c.immersion(),
        c.pullAboveDeck());
  }
}
