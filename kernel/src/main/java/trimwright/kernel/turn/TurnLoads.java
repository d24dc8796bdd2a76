package trimwright.kernel.turn;

/**
 * Bending moments that the water and the masses put into mast and wings, the parts' own weights and
 * their pull outwards counted for the mast.
 *
 * @param mastAside of the mast at the board's underside, sideways [N·m], the size
 * @param mastForeAft of the mast there, in the plane of symmetry, nose-up pull of the foil positive
 *     [N·m]
 * @param frontWingRoot of the more loaded half of the front wing at its root, size [N·m]
 * @param stabilizerRoot of the more loaded half of the stabilizer at its root, size [N·m]
 */
public record TurnLoads(
    double mastAside, double mastForeAft, double frontWingRoot, double stabilizerRoot) {}
