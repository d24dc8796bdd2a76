package trimwright.kernel.hull;

import java.util.Optional;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.WingSheet;
import trimwright.kernel.trim.ExampleCase;

/** The example case with what the tests turn on it. */
final class TakeOffCases {
  private TakeOffCases() {}

  static RideCase example() {
    return ExampleCase.PLAIN.build();
  }

  static RideCase withRider(RideCase c, double mass) {
    Rider r = c.rider();
    return with(
        c,
        new Rider(
            mass,
            r.kitMass(),
            r.height(),
            r.airDragArea(),
            r.frontFoot(),
            r.backFoot(),
            r.wishedSpeed(),
            r.wishedFootShare(),
            r.wishedPitch()),
        c.setup(),
        c.immersion());
  }

  static RideCase withPower(RideCase c, double power) {
    Drive d = c.setup().drive().orElseThrow();
    Drive other =
        new Drive(
            d.heightAboveFuselage(),
            d.behindMast(),
            d.thrustAngle(),
            d.diameter(),
            d.length(),
            d.propellerDiameter(),
            power,
            d.efficiency(),
            d.mass(),
            d.massAboveAxis(),
            d.volume());
    return withDrive(c, Optional.of(other));
  }

  static RideCase withDrive(RideCase c, Optional<Drive> drive) {
    Setup s = c.setup();
    return with(
        c,
        c.rider(),
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            drive,
            s.fuselage(),
            s.frontWing(),
            s.stabilizer(),
            s.shim()),
        c.immersion());
  }

  static RideCase withBoard(RideCase c, double mass, double volume) {
    Setup s = c.setup();
    Board b = s.board();
    Board other =
        new Board(
            mass,
            b.length(),
            b.width(),
            b.thickness(),
            volume,
            b.massCentreAhead(),
            b.massCentreBelowDeck(),
            b.track());
    return with(
        c,
        c.rider(),
        new Setup(
            other,
            s.battery(),
            s.mast(),
            s.drive(),
            s.fuselage(),
            s.frontWing(),
            s.stabilizer(),
            s.shim()),
        c.immersion());
  }

  /** Wings as small as a hand: nothing but the board carries. */
  static RideCase withoutWings(RideCase c) {
    Setup s = c.setup();
    return with(
        c,
        c.rider(),
        new Setup(
            s.board(), s.battery(), s.mast(), s.drive(), s.fuselage(), tiny(), tiny(), s.shim()),
        c.immersion());
  }

  private static FittedWing tiny() {
    return new FittedWing(
        new WingSheet(0.0004, 0.04, 0.011, 0.009, 0, 0, 0).shape(Sections.naca("0009")),
        0,
        0,
        0.01,
        0.1,
        0,
        Finish.CLEAN);
  }

  static RideCase withImmersion(RideCase c, double immersion) {
    return with(c, c.rider(), c.setup(), immersion);
  }

  private static RideCase with(RideCase c, Rider rider, Setup setup, double immersion) {
    return new RideCase(
        c.water(),
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        rider,
        setup,
        immersion,
        c.pullAboveDeck());
  }
}
