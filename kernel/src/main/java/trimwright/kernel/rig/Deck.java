package trimwright.kernel.rig;

/**
 * Where the deck stands on the mast, and with it everything whose place is measured along the deck.
 *
 * @param height of the deck above the datum along the mast's axis: mast length plus board thickness
 *     [m]
 * @param rake of the mast, foot forward positive [rad]
 * @param baseAngle the deck's angle to the fuselage, nose up positive [rad]
 */
public record Deck(double height, double rake, double baseAngle) {

  /** The deck of a setup. */
  static Deck of(Setup setup) {
    return new Deck(
        setup.mast().length() + setup.board().thickness(),
        setup.mast().rake(),
        setup.mast().baseAngle());
  }

  /**
   * How far ahead of the datum the point lies where the mast's axis pierces the deck, in water
   * axes.
   *
   * @param pitch of the fuselage [rad]
   * @return distance [m], negative behind
   */
  public double footingAhead(double pitch) {
    return -height * Math.sin(pitch + rake);
  }

  /**
   * How far above the datum that point lies, in water axes.
   *
   * @param pitch of the fuselage [rad]
   * @return height [m]
   */
  public double footingAbove(double pitch) {
    return height * Math.cos(pitch + rake);
  }

  /**
   * Place of a point in foil axes, ahead of the datum.
   *
   * @param along distance along the deck ahead of the mast's axis [m]
   * @param below distance below the deck, square to it [m]
   * @return distance ahead of the datum along the fuselage [m]
   */
  public double aheadInFoil(double along, double below) {
    return -height * Math.sin(rake) + along * Math.cos(baseAngle) + below * Math.sin(baseAngle);
  }

  /**
   * Place of a point in foil axes, above the datum.
   *
   * @param along distance along the deck ahead of the mast's axis [m]
   * @param below distance below the deck, square to it [m]
   * @return distance above the fuselage's axis [m]
   */
  public double aboveInFoil(double along, double below) {
    return height * Math.cos(rake) + along * Math.sin(baseAngle) - below * Math.cos(baseAngle);
  }
}
