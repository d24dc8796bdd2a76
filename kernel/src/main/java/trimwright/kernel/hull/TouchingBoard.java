package trimwright.kernel.hull;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.water.Water;

/**
 * A board that comes down to the water in flight: how high its ends stand, and what the water does
 * to it.
 *
 * <p>Its middle lies at its mass centre, its bottom is flat, as on the way to take-off. Immutable;
 * may be shared between threads.
 */
public final class TouchingBoard {
  /** Angle over which a bow digs in [rad]. Chosen. */
  private static final double DIG_IN = Math.toRadians(1);

  private final BoardHull hull;
  private final Water water;
  private final double sternAhead;
  private final double sternAbove;
  private final double bowAhead;
  private final double bowAbove;
  private final double baseAngle;

  /**
   * The board of a craft.
   *
   * @param craft the craft
   */
  public TouchingBoard(Craft craft) {
    Board b = craft.rideCase().setup().board();
    Deck deck = craft.deck();
    hull = new BoardHull(b.length(), b.width(), b.thickness(), b.volume());
    water = craft.rideCase().water();
    double middle = b.massCentreAhead() - b.track();
    double stern = middle - 0.5 * b.length();
    double bow = middle + 0.5 * b.length();
    sternAhead = deck.aheadInFoil(stern, b.thickness());
    sternAbove = deck.aboveInFoil(stern, b.thickness());
    bowAhead = deck.aheadInFoil(bow, b.thickness());
    bowAbove = deck.aboveInFoil(bow, b.thickness());
    baseAngle = deck.baseAngle();
  }

  /**
   * Height of the bottom's end at the bow above the datum.
   *
   * @param at of the fuselage
   * @return height [m]
   */
  public double bowAbove(Attitude at) {
    return bowAhead * at.sin() + bowAbove * at.cos();
  }

  /**
   * Height of the bottom's end at the stern above the datum.
   *
   * @param at of the fuselage
   * @return height [m]
   */
  public double sternAbove(Attitude at) {
    return sternAhead * at.sin() + sternAbove * at.cos();
  }

  /**
   * How far the bow is ahead of the datum.
   *
   * @param at of the fuselage
   * @return distance [m]
   */
  public double bowAhead(Attitude at) {
    return bowAhead * at.cos() - bowAbove * at.sin();
  }

  /**
   * How far the stern is ahead of the datum, negative behind.
   *
   * @param at of the fuselage
   * @return distance [m]
   */
  public double sternAhead(Attitude at) {
    return sternAhead * at.cos() - sternAbove * at.sin();
  }

  /**
   * The water's force, the bottom meeting the water at the angle of its own path. Bow up that of a
   * planing board; bow down what the bow displaces and the drag of its blunt end, coming in over a
   * degree: without rocker nothing else lifts it.
   *
   * @param at of the fuselage
   * @param datumDepth depth of the datum below the surface [m]
   * @param speed through the water [m/s]
   * @param path of the datum, upward positive [rad]
   * @return force with its moment about the datum; none where both ends are dry
   */
  public PlaneForce force(Attitude at, double datumDepth, double speed, double path) {
    double bowDepth = datumDepth - bowAbove(at);
    double sternDepth = datumDepth - sternAbove(at);
    if (!(sternDepth > 0 || bowDepth > 0)) {
      return PlaneForce.NONE;
    }
    double deck = at.angle() + baseAngle;
    PlaneForce sum = PlaneForce.NONE;
    if (sternDepth > 0) {
      double trim = Math.max(0, deck - path);
      sum =
          new HullAtSpeed(hull, water, speed)
              .at(trim, sternDepth)
              .force()
              .about(-sternAhead(at), -sternAbove(at));
    }
    double down = Math.max(0, Math.min(1, -deck / DIG_IN));
    return down > 0 && bowDepth > 0 ? sum.plus(bow(at, -deck, bowDepth, speed).times(down)) : sum;
  }

  /** Board and bow are alike at both ends: the bow under water is the stern seen from ahead. */
  private PlaneForce bow(Attitude at, double down, double depth, double speed) {
    Hydrostatics under = hull.under(down, depth);
    double buoyancy = water.density() * Craft.GRAVITY * under.volume();
    double wet = Math.min(hull.thickness(), depth);
    double drag = 0.5 * water.density() * speed * speed * HullAtSpeed.BLUNT * hull.beam() * wet;
    double back = under.centreAhead() * Math.cos(down) + under.centreAbove() * Math.sin(down);
    double up = under.centreAbove() * Math.cos(down) - under.centreAhead() * Math.sin(down);
    return PlaneForce.at(-drag, buoyancy, bowAhead(at) - back, bowAbove(at) + Math.max(0, up));
  }
}
