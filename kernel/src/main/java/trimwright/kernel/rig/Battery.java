package trimwright.kernel.rig;

/**
 * The battery, in the board.
 *
 * @param mass [kg]
 * @param energy [J]
 * @param usableShare share of the energy that may be used [1]
 * @param massCentreAhead mass centre ahead of the mast's axis with the mast in the middle of its
 *     track [m]
 * @param massCentreBelowDeck mass centre below the deck [m]
 */
public record Battery(
    double mass,
    double energy,
    double usableShare,
    double massCentreAhead,
    double massCentreBelowDeck) {}
