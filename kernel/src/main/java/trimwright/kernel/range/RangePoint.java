package trimwright.kernel.range;

/**
 * A battery emptied at one speed.
 *
 * @param speed through the water [m/s]
 * @param power electric [W]
 * @param drain rate at which the battery empties, its own warming counted [W]
 * @param duration until what may be used is used [s]
 * @param distance in still water [m]
 */
public record RangePoint(
    double speed, double power, double drain, double duration, double distance) {}
