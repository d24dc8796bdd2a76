package trimwright.kernel.band;

import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.water.Water;

/**
 * A case with one of its numbers moved. Numbers are counted in the order of their records.
 *
 * <p>Each returns the change as a function of the case and the amount.
 */
@FunctionalInterface
interface CaseChange {
  /** The case with the number moved by an amount in its own unit, or by a share of itself. */
  RideCase of(RideCase rideCase, double by);

  /** Moves a number of the rider by an amount. */
  static CaseChange rider(int which) {
    return (c, by) -> withRider(c, which, number -> number + by);
  }

  /** Moves a number of the rider by a share of itself. */
  static CaseChange riderShare(int which) {
    return (c, by) -> withRider(c, which, number -> number * (1 + by));
  }

  private static RideCase withRider(RideCase c, int which, DoubleUnaryOperator change) {
    Rider r = c.rider();
    double[] n = {r.mass(), r.kitMass(), r.height(), r.airDragArea(), r.frontFoot(), r.backFoot()};
    n[which] = change.applyAsDouble(n[which]);
    return new RideCase(
        c.water(),
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        new Rider(
            n[0],
            n[1],
            n[2],
            n[3],
            n[4],
            n[5],
            r.wishedSpeed(),
            r.wishedFootShare(),
            r.wishedPitch()),
        c.setup(),
        c.immersion(),
        c.pullAboveDeck(),
        c.limits());
  }

  /** Moves the viscosity by a share, the wind and the immersion by an amount. */
  static RideCase ride(RideCase c, double viscosity, double wind, double immersion) {
    Water w = c.water();
    return new RideCase(
        new Water(w.density(), w.kinematicViscosity() * (1 + viscosity), w.vapourPressure()),
        c.airDensity(),
        c.headWind() + wind,
        c.chopHeight(),
        c.rider(),
        c.setup(),
        // Never out of the water.
        Math.max(0.1 * c.immersion(), c.immersion() + immersion),
        c.pullAboveDeck(),
        c.limits());
  }

  /** Moves a number of the board: 0 mass (by a share), 1 mass centre, 2 track. */
  static CaseChange board(int which) {
    return setup(
        (s, by) -> {
          Board b = s.board();
          double[] n = {0, 0, 0};
          n[which] = by;
          Board moved =
              new Board(
                  b.mass() * (1 + n[0]),
                  b.length(),
                  b.width(),
                  b.thickness(),
                  b.volume(),
                  b.massCentreAhead() + n[1],
                  b.massCentreBelowDeck(),
                  b.track() + n[2]);
          return with(s, moved, s.mast(), s.fuselage());
        });
  }

  /** Moves a number of the battery, where there is one: 0 mass (by a share), 1 mass centre. */
  static CaseChange battery(int which) {
    return setup(
        (s, by) ->
            new Setup(
                s.board(),
                s.battery()
                    .map(
                        b ->
                            new Battery(
                                which == 0 ? b.mass() * (1 + by) : b.mass(),
                                b.energy(),
                                b.usableShare(),
                                which == 1 ? b.massCentreAhead() + by : b.massCentreAhead(),
                                b.massCentreBelowDeck(),
                                b.cells())),
                s.mast(),
                s.drive(),
                s.fuselage(),
                s.frontWing(),
                s.stabilizer(),
                s.shim()));
  }

  /**
   * Moves a number of the mast: 0 length, 1 base angle, 2 rake, 3 mass (by a share), 4 chord, 5
   * thickness.
   */
  static CaseChange mast(int which) {
    return setup(
        (s, by) -> {
          Mast m = s.mast();
          double[] n = {0, 0, 0, 0, 0, 0};
          n[which] = by;
          Mast moved =
              new Mast(
                  m.length() + n[0],
                  // A hint of a mast stays one.
                  Math.max(0.5 * m.chord(), m.chord() + n[4]),
                  Math.max(0.5 * m.thickness(), m.thickness() + n[5]),
                  m.baseAngle() + n[1],
                  m.rake() + n[2],
                  m.mass() * (1 + n[3]),
                  m.massAboveAxis(),
                  m.volume(),
                  m.finish());
          return with(s, s.board(), moved, s.fuselage());
        });
  }

  /**
   * Moves a number of the drive, where there is one: 0 height of the thrust line, 1 its angle, 2
   * power that it takes at most (by a share), 3 mass (by a share).
   */
  static CaseChange drive(int which) {
    return setup(
        (s, by) -> {
          double[] n = {0, 0, 0, 0};
          n[which] = by;
          return new Setup(
              s.board(),
              s.battery(),
              s.mast(),
              s.drive().map(d -> moved(d, n)),
              s.fuselage(),
              s.frontWing(),
              s.stabilizer(),
              s.shim());
        });
  }

  private static Drive moved(Drive d, double[] n) {
    return new Drive(
        d.heightAboveFuselage() + n[0],
        d.behindMast(),
        d.thrustAngle() + n[1],
        d.diameter(),
        d.length(),
        d.propellerDiameter(),
        d.maximumPower() * (1 + n[2]),
        d.efficiency(),
        d.mass() * (1 + n[3]),
        d.massAboveAxis(),
        d.volume(),
        d.powerplant());
  }

  /** Moves a number of the fuselage: 0 front wing's place, 1 stabilizer's, 2 mass (by a share). */
  static CaseChange fuselage(int which) {
    return setup(
        (s, by) -> {
          Fuselage f = s.fuselage();
          double[] n = {0, 0, 0};
          n[which] = by;
          Fuselage moved =
              new Fuselage(
                  f.length(),
                  f.diameter(),
                  f.frontWingAhead() + n[0],
                  f.stabilizerBehind() + n[1],
                  f.mass() * (1 + n[2]),
                  f.massAboveAxis(),
                  f.volume());
          return with(s, s.board(), s.mast(), moved);
        });
  }

  /** Changes the front wing. */
  static CaseChange frontWing(WingChange change) {
    return setup((s, by) -> wings(s, w -> change.of(w, by), w -> w));
  }

  /** Changes the stabilizer. */
  static CaseChange stabilizer(WingChange change) {
    return setup((s, by) -> wings(s, w -> w, w -> change.of(w, by)));
  }

  /** Changes both wings alike. */
  static CaseChange bothWings(WingChange change) {
    return setup((s, by) -> wings(s, w -> change.of(w, by), w -> change.of(w, by)));
  }

  private static Setup wings(
      Setup s, UnaryOperator<FittedWing> front, UnaryOperator<FittedWing> stabilizer) {
    return new Setup(
        s.board(),
        s.battery(),
        s.mast(),
        s.drive(),
        s.fuselage(),
        front.apply(s.frontWing()),
        stabilizer.apply(s.stabilizer()),
        s.shim());
  }

  private static Setup with(Setup s, Board board, Mast mast, Fuselage fuselage) {
    return new Setup(
        board, s.battery(), mast, s.drive(), fuselage, s.frontWing(), s.stabilizer(), s.shim());
  }

  private static CaseChange setup(SetupChange change) {
    return (c, by) ->
        new RideCase(
            c.water(),
            c.airDensity(),
            c.headWind(),
            c.chopHeight(),
            c.rider(),
            change.of(c.setup(), by),
            c.immersion(),
            c.pullAboveDeck(),
            c.limits());
  }

  /** The same for a setup. */
  @FunctionalInterface
  interface SetupChange {
    Setup of(Setup setup, double by);
  }
}
