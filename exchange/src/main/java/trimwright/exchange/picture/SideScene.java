package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.trim.TrimPoint;

/**
 * What a side view shows, as numbers for whoever draws it: outlines of the craft with its deck
 * level, and the forces at a trim point. Metres, ahead and up from the datum (mast's axis on
 * fuselage's axis); turning an outline by the deck's pitch about the datum puts it where it rides.
 */
public final class SideScene {
  /** Names of hues in place of paints. */
  private static final Palette HUES =
      new Palette(
          "ground", "surface", "ink", "muted", "edge", "action", "surface", "front", "back", "good",
          "warn", "bad", "window");

  private static final Map<String, String> NAMES =
      Map.of(
          "front-foot-load", "front foot",
          "back-foot-load", "back foot",
          "front-wing-lift", "front wing",
          "stabilizer-lift", "stabilizer",
          "thrust", "thrust",
          "drag", "drag",
          "gear-weight", "weight of gear");

  /** Points on one side of a board's outline. */
  private static final int BOARD_POINTS = 12;

  private final RideCase rideCase;
  private final SideGeometry level;

  private SideScene(RideCase rideCase) {
    this.rideCase = rideCase;
    this.level = new SideGeometry(rideCase, 0);
  }

  /**
   * The scene of a case.
   *
   * @param rideCase the case
   * @return its scene
   */
  public static SideScene of(RideCase rideCase) {
    return new SideScene(rideCase);
  }

  /**
   * An outline.
   *
   * @param kind what it is, such as {@code front-wing}
   * @param points ahead and up in turn [m]
   */
  public record Outline(String kind, double[] points) {}

  /**
   * A kind of force and how it is drawn, at any speed.
   *
   * @param code what it is, such as {@code front-wing-lift}
   * @param name what people call it
   * @param hue name of its colour: front, back, ink or action
   * @param dashed whether it belongs to the back of the craft
   * @param towards whether its arrow ends where it acts
   * @param unit in which people read it: {@code kg} or {@code n}
   */
  public record ForceKind(
      String code, String name, String hue, boolean dashed, boolean towards, String unit) {}

  /**
   * A force at one speed.
   *
   * @param kind what it is and how it is drawn
   * @param x where it acts, ahead [m]
   * @param y where it acts, up [m]
   * @param ahead part along the direction of travel [N]
   * @param up part straight up [N]
   */
  public record Force(ForceKind kind, double x, double y, double ahead, double up) {}

  /** The craft with its deck level, what lies behind first. */
  public List<Outline> outlines() {
    List<Outline> all = new ArrayList<>();
    all.add(outline("mast", level.mast()));
    level.findDrive().ifPresent(d -> all.add(outline("drive", d)));
    level.findPropeller().ifPresent(p -> all.add(outline("propeller", p)));
    all.add(outline("fuselage", level.fuselage()));
    all.add(outline("front-wing-shadow", level.frontWingShadow()));
    all.add(outline("stabilizer-shadow", level.stabilizerShadow()));
    all.add(outline("front-wing", level.frontWing()));
    all.add(outline("stabilizer", level.stabilizer()));
    all.add(outline("board", level.board()));
    return all;
  }

  /** Root quarter chord of the front wing with the deck level [m]. */
  public double[] frontWingRoot() {
    return pair(level.frontWingRoot());
  }

  /** Front foot on the level deck [m]. */
  public double[] frontFoot() {
    return pair(level.frontFoot());
  }

  /** Back foot on the level deck [m]. */
  public double[] backFoot() {
    return pair(level.backFoot());
  }

  /** Where the mast's axis pierces the level deck [m]. */
  public double[] deck() {
    return pair(level.deck(0, 0));
  }

  /**
   * The forces at a trim point, with the craft pitched as it rides there.
   *
   * @param point the trim point
   * @return the forces, the most important first
   */
  public List<Force> forces(TrimPoint point) {
    SideGeometry place = new SideGeometry(rideCase, point.pitch());
    return SideForces.of(rideCase, point, place, HUES, Measures.METRIC).stream()
        .map(
            f ->
                new Force(
                    new ForceKind(
                        f.kind(),
                        name(f),
                        f.colour(),
                        f.dashed(),
                        f.towards(),
                        f.unit().equals("kg") ? "kg" : "n"),
                    f.at().ahead(),
                    f.at().above(),
                    f.ahead(),
                    f.up()))
        .toList();
  }

  private String name(SideForce force) {
    boolean isPull = rideCase.setup().drive().isEmpty() && rideCase.pullAboveDeck().isPresent();
    return isPull && force.kind().equals("thrust")
        ? "pull"
        : NAMES.getOrDefault(force.kind(), force.kind());
  }

  /**
   * A wing from above.
   *
   * @param shape the wing
   * @return across and ahead in turn [m]
   */
  public static double[] planform(WingShape shape) {
    return flat(Thinned.of(PlanformPicture.outline(shape)));
  }

  /**
   * The board from above: widest a little behind the middle, with a pointed nose and a cut tail.
   *
   * @return across and ahead in turn [m]
   */
  public double[] boardPlanform() {
    return planform(rideCase.setup().board());
  }

  /**
   * A board from above, as {@link #boardPlanform}.
   *
   * @param board the board
   * @return across and ahead in turn [m]
   */
  public static double[] planform(Board board) {
    double middle = board.massCentreAhead() - board.track();
    List<Spot> starboard = new ArrayList<>();
    for (int i = 0; i <= BOARD_POINTS; i++) {
      double along = -1 + 2.0 * i / BOARD_POINTS;
      // Half widths: full over the back two thirds, rounded in to a nose.
      double half = along < 0 ? 1 - 0.25 * along * along : Math.sqrt(1 - Math.pow(along, 4));
      starboard.add(new Spot(half * board.width() / 2, middle + along * board.length() / 2));
    }
    List<Spot> all = new ArrayList<>(starboard);
    for (int i = BOARD_POINTS; i >= 0; i--) {
      Spot spot = starboard.get(i);
      all.add(new Spot(-spot.ahead(), spot.above()));
    }
    return flat(all);
  }

  private static Outline outline(String kind, List<Spot> spots) {
    return new Outline(kind, flat(Thinned.of(spots)));
  }

  private static double[] flat(List<Spot> spots) {
    double[] all = new double[2 * spots.size()];
    for (int i = 0; i < spots.size(); i++) {
      all[2 * i] = spots.get(i).ahead();
      all[2 * i + 1] = spots.get(i).above();
    }
    return all;
  }

  private static double[] pair(Spot spot) {
    return new double[] {spot.ahead(), spot.above()};
  }
}
