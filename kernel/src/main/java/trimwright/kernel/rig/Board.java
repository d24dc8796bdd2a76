package trimwright.kernel.rig;

/**
 * The board.
 *
 * @param mass [kg]
 * @param length [m]
 * @param width [m]
 * @param thickness [m]
 * @param volume [m³]
 * @param massCentreAhead mass centre ahead of the mast's axis with the mast in the middle of its
 *     track [m]
 * @param massCentreBelowDeck mass centre below the deck [m]
 * @param track how far the mast is moved forward from the middle of its track [m]
 */
public record Board(
    double mass,
    double length,
    double width,
    double thickness,
    double volume,
    double massCentreAhead,
    double massCentreBelowDeck,
    double track) {}
