package trimwright.kernel.rig;

import trimwright.kernel.frame.Attitude;

/** How high a flying board is. */
public final class BoardHeight {
  private BoardHeight() {}

  /**
   * Height of the lower end of the board's underside above the crests of the chop. The board's
   * middle is taken to lie at its mass centre.
   *
   * @param craft the craft
   * @param pitch of the fuselage [rad]
   * @return height [m], negative where it touches
   */
  public static double aboveCrests(Craft craft, double pitch) {
    return aboveCrests(craft, pitch, 0);
  }

  /**
   * The same with the mast moved in its track.
   *
   * @param craft the craft
   * @param pitch of the fuselage [rad]
   * @param forward how far the mast is moved from where the craft has it [m]
   * @return height [m], negative where it touches
   */
  public static double aboveCrests(Craft craft, double pitch, double forward) {
    Board board = craft.rideCase().setup().board();
    Deck deck = craft.deck();
    Attitude at = Attitude.of(pitch);
    double middle = board.massCentreAhead() - board.track() - forward;
    double lowest = Double.POSITIVE_INFINITY;
    for (int end = -1; end <= 1; end += 2) {
      double along = middle + end * 0.5 * board.length();
      double ahead = deck.aheadInFoil(along, board.thickness());
      double above = deck.aboveInFoil(along, board.thickness());
      lowest = Math.min(lowest, ahead * at.sin() + above * at.cos());
    }
    return lowest - craft.datumDepth(at) - 0.5 * craft.rideCase().chopHeight();
  }
}
