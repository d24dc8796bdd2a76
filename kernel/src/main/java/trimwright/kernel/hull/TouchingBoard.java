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
   * The water's force, the bottom meeting the water at the angle of its own path. Bow up only: at a
   * negative angle that of a level board stands, without suction.
   *
   * @param at of the fuselage
   * @param datumDepth depth of the datum below the surface [m]
   * @param speed through the water [m/s]
   * @param path of the datum, upward positive [rad]
   * @return force with its moment about the datum; none where the stern is dry
   */
  public PlaneForce force(Attitude at, double datumDepth, double speed, double path) {
    double above = sternAbove(at);
    double sternDepth = datumDepth - above;
    if (!(sternDepth > 0)) {
      return PlaneForce.NONE;
    }
    double trim = Math.max(0, at.angle() + baseAngle - path);
    return new HullAtSpeed(hull, water, speed)
        .at(trim, sternDepth)
        .force()
        .about(-sternAhead(at), -above);
  }
}
