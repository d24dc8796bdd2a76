package trimwright.kernel.hull;

/**
 * What of a board is under water.
 *
 * @param volume displaced [m³]
 * @param centreAhead its centre ahead of the stern along the bottom [m]; 0 where nothing is under
 *     water
 * @param centreAbove its centre above the bottom, square to it [m]
 * @param waterplane area at the surface [m²]
 * @param waterplaneAhead its centre ahead of the stern, level [m]
 * @param waterplaneInertia its second moment about its own centre, for turning in pitch [m⁴]
 * @param sides wetted area of both rails [m²]
 */
public record Hydrostatics(
    double volume,
    double centreAhead,
    double centreAbove,
    double waterplane,
    double waterplaneAhead,
    double waterplaneInertia,
    double sides) {}
