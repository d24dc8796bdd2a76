package trimwright.kernel.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;

/** Where the drive hangs, and what of it is under water. */
class DrivePlaceTest {
  /** Rounding of differences of moments of some hundred newton metres. */
  private static final double ROUNDING = 1e-9;

  /** Height of the example's pod above the fuselage's axis [m]. */
  private static final double POD_HEIGHT = 0.180;

  private static final double POD_MASS = 3.5;

  private static RideCase raked(double rake, boolean drive) {
    RideCase c = ExampleCase.PLAIN.build();
    Setup s = c.setup();
    Mast m = s.mast();
    Mast turned =
        new Mast(
            m.length(),
            m.chord(),
            m.thickness(),
            m.baseAngle(),
            rake,
            m.mass(),
            m.massAboveAxis(),
            m.volume(),
            m.finish());
    return with(c, turned, drive ? s.drive() : Optional.empty());
  }

  private static RideCase with(RideCase c, Mast mast, Optional<Drive> drive) {
    Setup s = c.setup();
    return new RideCase(
        c.water(),
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        c.rider(),
        new Setup(
            s.board(),
            s.battery(),
            mast,
            drive,
            s.fuselage(),
            s.frontWing(),
            s.stabilizer(),
            s.shim()),
        c.immersion(),
        c.pullAboveDeck());
  }

  /** A pod on a mast raked by 10 degrees stands on the mast: its weight acts behind the datum. */
  @Test
  void aPodOnARakedMastStandsOnTheMast() {
    double rake = Math.toRadians(10);
    PlaneForce with = new Craft(raked(rake, true)).weights(0);
    PlaneForce without = new Craft(raked(rake, false)).weights(0);
    double weight = POD_MASS * Craft.GRAVITY;
    assertThat(with.up() - without.up()).isCloseTo(-weight, within(ROUNDING));
    assertThat(with.noseUp() - without.noseUp())
        .isCloseTo(weight * POD_HEIGHT * Math.tan(rake), within(ROUNDING));
  }

  @Test
  void aPodOutOfTheWaterDoesNotFloat() {
    RideCase c = ExampleCase.PLAIN.withImmersion(0.100).build();
    Craft with = new Craft(c);
    Craft without = new Craft(with(c, c.setup().mast(), Optional.empty()));
    assertThat(with.buoyancy(0).up()).isCloseTo(without.buoyancy(0).up(), within(ROUNDING));
  }

  /** Forces are continuous in the pitch where the pod comes through the surface. */
  @Test
  void noForceJumpsWhereThePodMeetsTheSurface() {
    Craft craft = new Craft(ExampleCase.PLAIN.withImmersion(0.185).build());
    double step = 1e-5;
    double before = craft.drags(-0.1, 7).forward();
    for (double pitch = -0.1 + step; pitch < 0.1; pitch += step) {
      double here = craft.drags(pitch, 7).forward();
      // The whole pod drags some 10 N; over its diameter that is far below a newton each step.
      assertThat(Math.abs(here - before)).isLessThan(0.05);
      before = here;
    }
  }
}
