package trimwright.kernel.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/** Where the parts are and where their forces act. */
class CraftTest {
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

  /** All that a pod adds to the drag, its corners with the mast too, acts at the pod's height. */
  @Test
  void thePodsDragActsAtItsHeight() {
    PlaneForce with = new Craft(raked(0, true)).drags(0, 7);
    PlaneForce without = new Craft(raked(0, false)).drags(0, 7);
    double more = without.forward() - with.forward();
    assertThat(more).isGreaterThan(5);
    assertThat(with.noseUp() - without.noseUp()).isCloseTo(more * POD_HEIGHT, within(ROUNDING));
  }

  /** A straight taper is the same body, told by two stations or by many. */
  @Test
  void aWingsBuoyancyDoesNotDependOnTheNumberOfItsStations() {
    PlaneForce two = new Craft(withTaper(1)).buoyancy(0);
    PlaneForce many = new Craft(withTaper(50)).buoyancy(0);
    assertThat(two.up()).isCloseTo(many.up(), within(ROUNDING));
    assertThat(two.noseUp()).isCloseTo(many.noseUp(), within(ROUNDING));
  }

  private static RideCase withTaper(int pieces) {
    RideCase c = ExampleCase.PLAIN.build();
    Setup s = c.setup();
    FittedWing w = s.frontWing();
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      double e = (double) i / pieces;
      stations.add(
          new Station(
              e, 0.22 - 0.18 * e, -0.08 * e, -0.03 * e, 0, w.shape().stations().get(0).section()));
    }
    FittedWing taper =
        new FittedWing(
            new WingShape(w.shape().span(), stations),
            w.setting(),
            w.height(),
            w.mass(),
            w.massAboveAxis(),
            w.volume(),
            w.finish());
    Setup changed =
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            s.drive(),
            s.fuselage(),
            taper,
            s.stabilizer(),
            s.shim());
    return new RideCase(
        c.water(),
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        c.rider(),
        changed,
        c.immersion(),
        c.pullAboveDeck());
  }
}
