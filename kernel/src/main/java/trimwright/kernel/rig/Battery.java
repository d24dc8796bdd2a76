package trimwright.kernel.rig;

import trimwright.kernel.propel.BatteryPack;
import trimwright.kernel.propel.Cells;

/**
 * The battery, in the board.
 *
 * @param mass [kg]
 * @param energy [J]
 * @param usableShare share of the energy that may be used [1]
 * @param massCentreAhead mass centre ahead of the mast's axis with the mast in the middle of its
 *     track [m]
 * @param massCentreBelowDeck mass centre below the deck [m]
 * @param cells what is known of its cells
 */
public record Battery(
    double mass,
    double energy,
    double usableShare,
    double massCentreAhead,
    double massCentreBelowDeck,
    Cells cells) {

  /**
   * A battery of whose cells nothing is known.
   *
   * @param mass [kg]
   * @param energy [J]
   * @param usableShare share of the energy that may be used [1]
   * @param massCentreAhead as above [m]
   * @param massCentreBelowDeck as above [m]
   */
  public Battery(
      double mass,
      double energy,
      double usableShare,
      double massCentreAhead,
      double massCentreBelowDeck) {
    this(mass, energy, usableShare, massCentreAhead, massCentreBelowDeck, Cells.UNKNOWN);
  }

  /**
   * What it gives to a drive.
   *
   * @return the battery without its weight
   */
  public BatteryPack pack() {
    return new BatteryPack(energy, usableShare, cells);
  }
}
