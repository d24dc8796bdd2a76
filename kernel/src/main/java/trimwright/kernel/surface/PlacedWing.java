package trimwright.kernel.surface;

/**
 * A wing where it stands, in foil axes.
 *
 * @param shape geometry
 * @param ahead root quarter chord ahead of the datum [m]
 * @param above root quarter chord above the datum [m]
 * @param incidence root chord against the fuselage's axis, leading edge up positive [rad]
 * @param size how finely it is divided
 */
public record PlacedWing(
    WingShape shape, double ahead, double above, double incidence, LatticeSize size) {}
