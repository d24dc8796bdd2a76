package trimwright.kernel.propel;

/**
 * A propeller's blades.
 *
 * @param count how many
 * @param pitch way per turn at three quarters of the radius [m]
 * @param areaRatio expanded area of the blades over the disc's area [1]
 */
public record Blades(int count, double pitch, double areaRatio) {}
