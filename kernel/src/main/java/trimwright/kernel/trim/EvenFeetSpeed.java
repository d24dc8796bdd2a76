package trimwright.kernel.trim;

/**
 * A speed at which both feet carry the same.
 *
 * @param speed [m/s]
 * @param rising whether the foot share grows with speed there
 */
public record EvenFeetSpeed(double speed, boolean rising) {}
