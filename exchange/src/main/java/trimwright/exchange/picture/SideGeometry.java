package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Station;

/**
 * Where everything of a case lies when the deck has a given pitch, seen from the side, in metres.
 *
 * <p>A case does not say where on the board the mast's track lies, nor where the fuselage's ends
 * are: the board's middle is taken at its mass centre, and the fuselage reaches equally far beyond
 * both wings.
 */
final class SideGeometry {
  private static final double QUARTER = 0.25;
  private static final int ROUND_END_POINTS = 8;

  /**
   * A wing from a sheet has so many stations on a smooth outline, and a quarter of them tells it.
   */
  private static final int MANY_STATIONS = 64;

  private static final int FEWER_STATIONS = 4;

  /** Of a section's outline every so many points tell its shadow. */
  private static final int FEWER_POINTS = 2;

  private final RideCase rideCase;
  private final Setup setup;
  private final double deckPitch;
  private final double fuselagePitch;
  private final Turn deckTurn;
  private final Turn fuselageTurn;

  SideGeometry(RideCase rideCase, double deckPitch) {
    this.rideCase = rideCase;
    this.setup = rideCase.setup();
    this.deckPitch = deckPitch;
    this.fuselagePitch = deckPitch - setup.mast().baseAngle();
    this.deckTurn = Turn.by(deckPitch);
    this.fuselageTurn = Turn.by(fuselagePitch);
  }

  /** A place given in foil axes: ahead along the fuselage and above its axis. */
  Spot body(double ahead, double above) {
    return fuselageTurn.of(ahead, above);
  }

  /** A place given on the board: ahead along the deck from the mast's axis, and below the deck. */
  Spot deck(double ahead, double below) {
    Board board = setup.board();
    Spot pierced = mastAxis(setup.mast().length() + board.thickness());
    Spot from = deckTurn.of(ahead, -below);
    return pierced.plus(from.ahead(), from.above());
  }

  /** A place on the mast's axis, so far from the fuselage's axis. */
  Spot mastAxis(double along) {
    double rake = setup.mast().rake();
    // The mast's foot swings forward with rake, so its head lies aft of the foot.
    return body(-along * Math.sin(rake), along * Math.cos(rake));
  }

  /** Height of the still water above the datum. */
  double waterline() {
    return frontWingRoot().above() + rideCase.immersion();
  }

  Spot frontWingRoot() {
    return body(setup.fuselage().frontWingAhead(), setup.frontWing().height());
  }

  Spot stabilizerRoot() {
    return body(-setup.fuselage().stabilizerBehind(), setup.stabilizer().height());
  }

  /** The mast's outline: foot behind, foot in front, head in front, head behind. */
  List<Spot> mast() {
    Mast mast = setup.mast();
    double half = mast.chord() / 2;
    Spot head = mastAxis(mast.length());
    double ahead = half * Math.cos(deckPitch);
    double above = half * Math.sin(deckPitch);
    return List.of(
        body(-half, 0), body(half, 0), head.plus(ahead, above), head.plus(-ahead, -above));
  }

  /** The board's outline, from the tail along the deck to the nose and back below. */
  List<Spot> board() {
    Board board = setup.board();
    double half = board.length() / 2;
    double middle = board.massCentreAhead() - board.track();
    double thick = board.thickness();
    // Along the board in half lengths, down in thicknesses: a plain scow with a risen nose.
    double[][] outline = {
      {-1, 0},
      {0.97, 0},
      {1, 0.12},
      {0.93, 0.35},
      {0.78, 0.7},
      {0.55, 0.92},
      {0.3, 1},
      {-0.9, 1},
      {-1, 0.8}
    };
    List<Spot> spots = new ArrayList<>();
    for (double[] point : outline) {
      spots.add(deck(middle + point[0] * half, point[1] * thick));
    }
    return spots;
  }

  List<Spot> fuselage() {
    Fuselage fuselage = setup.fuselage();
    double middle = (fuselage.frontWingAhead() - fuselage.stabilizerBehind()) / 2;
    return tube(middle, 0, 0, fuselage.length(), fuselage.diameter());
  }

  /** The front end of the fuselage's axis. */
  Spot fuselageNose() {
    Fuselage fuselage = setup.fuselage();
    double middle = (fuselage.frontWingAhead() - fuselage.stabilizerBehind()) / 2;
    return body(middle + fuselage.length() / 2, 0);
  }

  Optional<List<Spot>> findDrive() {
    return setup
        .drive()
        .map(
            d ->
                tube(
                    setup.podAhead(),
                    d.heightAboveFuselage(),
                    d.thrustAngle(),
                    d.length(),
                    d.diameter()));
  }

  /** The propeller's disc seen edge on, at the back end of the pod. */
  Optional<List<Spot>> findPropeller() {
    return setup.drive().map(this::propeller);
  }

  private List<Spot> propeller(Drive drive) {
    double cos = Math.cos(drive.thrustAngle());
    double sin = Math.sin(drive.thrustAngle());
    double aft = drive.length() / 2;
    double radius = drive.propellerDiameter() / 2;
    double x = setup.podAhead() - aft * cos;
    double y = drive.heightAboveFuselage() - aft * sin;
    return List.of(
        body(x - radius * sin, y + radius * cos), body(x + radius * sin, y - radius * cos));
  }

  private List<Spot> tube(double x, double y, double angle, double length, double diameter) {
    double radius = diameter / 2;
    double straight = Math.max(0, length / 2 - radius);
    List<Spot> spots = new ArrayList<>();
    for (int end = 0; end < 2; end++) {
      for (int i = 0; i <= ROUND_END_POINTS; i++) {
        double turn = Math.PI * (end - 0.5 + (double) i / ROUND_END_POINTS);
        double along = (end == 0 ? straight : -straight) + radius * Math.cos(turn);
        double up = radius * Math.sin(turn);
        spots.add(
            body(
                x + along * Math.cos(angle) - up * Math.sin(angle),
                y + along * Math.sin(angle) + up * Math.cos(angle)));
      }
    }
    return spots;
  }

  /** Root section of the front wing, to scale. */
  List<Spot> frontWing() {
    FittedWing wing = setup.frontWing();
    return section(wing, rootStation(wing), setup.fuselage().frontWingAhead(), wing.setting());
  }

  /** Root section of the stabilizer, to scale, with its shim. */
  List<Spot> stabilizer() {
    FittedWing wing = setup.stabilizer();
    double angle = wing.setting() + setup.shim();
    return section(wing, rootStation(wing), -setup.fuselage().stabilizerBehind(), angle);
  }

  /** The front wing's shadow from the side: everything between root and tip. */
  List<Spot> frontWingShadow() {
    FittedWing wing = setup.frontWing();
    return shadow(wing, setup.fuselage().frontWingAhead(), wing.setting());
  }

  /** The stabilizer's shadow from the side. */
  List<Spot> stabilizerShadow() {
    FittedWing wing = setup.stabilizer();
    double angle = wing.setting() + setup.shim();
    return shadow(wing, -setup.fuselage().stabilizerBehind(), angle);
  }

  private List<Spot> shadow(FittedWing wing, double ahead, double setting) {
    List<Station> stations = wing.shape().stations();
    int last = stations.size() - 1;
    int step = last >= MANY_STATIONS ? FEWER_STATIONS : 1;
    List<Spot> all = new ArrayList<>();
    for (int i = 0; i < last; i += step) {
      all.addAll(section(wing, stations.get(i), ahead, setting, FEWER_POINTS));
    }
    all.addAll(section(wing, stations.get(last), ahead, setting, FEWER_POINTS));
    return Hull.of(all);
  }

  private static Station rootStation(FittedWing wing) {
    return wing.shape().stations().get(0);
  }

  private List<Spot> section(FittedWing wing, Station station, double ahead, double setting) {
    return section(wing, station, ahead, setting, 1);
  }

  /** Every so many points of a section's outline, both ends included. */
  private List<Spot> section(
      FittedWing wing, Station station, double ahead, double setting, int step) {
    double[] x = station.section().shape().x();
    double[] y = station.section().shape().y();
    // Section axes run aft and up from the leading edge; the wing turns about the root's quarter
    // chord, and each station about its own.
    Turn wingTurn = Turn.by(setting).then(fuselageTurn);
    Turn ownTurn = Turn.by(station.twist()).then(wingTurn);
    Spot root = body(ahead, wing.height());
    Spot quarter = wingTurn.of(station.ahead(), station.above());
    Spot from = root.plus(quarter.ahead(), quarter.above());
    double chord = station.chord();
    List<Spot> spots = new ArrayList<>(x.length / step + 1);
    for (int i = 0; i < x.length; i += step) {
      Spot own = ownTurn.of((QUARTER - x[i]) * chord, y[i] * chord);
      spots.add(from.plus(own.ahead(), own.above()));
    }
    return spots;
  }

  /** Where the front foot stands, on the deck. */
  Spot frontFoot() {
    return deck(rider().frontFoot() - setup.board().track(), 0);
  }

  /** Where the back foot stands, on the deck. */
  Spot backFoot() {
    return deck(rider().backFoot() - setup.board().track(), 0);
  }

  private Rider rider() {
    return rideCase.rider();
  }

  double deckPitch() {
    return deckPitch;
  }

  double fuselagePitch() {
    return fuselagePitch;
  }

  /** Mass of board, battery and foil together [kg]. */
  double gearMass() {
    return masses().stream().mapToDouble(Mass::mass).sum();
  }

  /** Mass centre of board, battery and foil. */
  Spot gearMassCentre() {
    double mass = 0;
    double ahead = 0;
    double above = 0;
    for (Mass part : masses()) {
      mass += part.mass();
      ahead += part.mass() * part.at().ahead();
      above += part.mass() * part.at().above();
    }
    return mass > 0 ? new Spot(ahead / mass, above / mass) : deck(0, 0);
  }

  private record Mass(double mass, Spot at) {}

  private List<Mass> masses() {
    List<Mass> all = new ArrayList<>();
    Board board = setup.board();
    Fuselage tube = setup.fuselage();
    all.add(
        new Mass(
            board.mass(),
            deck(board.massCentreAhead() - board.track(), board.massCentreBelowDeck())));
    setup
        .battery()
        .ifPresent(
            b ->
                all.add(
                    new Mass(
                        b.mass(),
                        deck(b.massCentreAhead() - board.track(), b.massCentreBelowDeck()))));
    double mastAhead = -setup.mast().massAboveAxis() * Math.tan(setup.mast().rake());
    all.add(new Mass(setup.mast().mass(), body(mastAhead, setup.mast().massAboveAxis())));
    setup
        .drive()
        .ifPresent(d -> all.add(new Mass(d.mass(), body(setup.podAhead(), d.massAboveAxis()))));
    double middle = (tube.frontWingAhead() - tube.stabilizerBehind()) / 2;
    all.add(new Mass(tube.mass(), body(middle, tube.massAboveAxis())));
    FittedWing front = setup.frontWing();
    all.add(new Mass(front.mass(), body(tube.frontWingAhead(), front.massAboveAxis())));
    FittedWing back = setup.stabilizer();
    all.add(new Mass(back.mass(), body(-tube.stabilizerBehind(), back.massAboveAxis())));
    return all;
  }
}
