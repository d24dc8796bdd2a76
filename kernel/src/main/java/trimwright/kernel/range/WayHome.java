package trimwright.kernel.range;

/**
 * The way home from the farthest point of a ride.
 *
 * @param distance [m]
 * @param current against the way home [m/s]; negative where it helps
 * @param headWind against the way home [m/s]; negative from behind
 */
public record WayHome(double distance, double current, double headWind) {}
