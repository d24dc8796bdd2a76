package trimwright.kernel.trim;

/**
 * A stretch of speeds.
 *
 * @param from lower end [m/s]
 * @param to upper end [m/s]
 */
public record SpeedInterval(double from, double to) {}
