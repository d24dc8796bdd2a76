package trimwright.kernel.propel;

/**
 * The most that a drive pushes at a speed.
 *
 * @param speed [m/s]
 * @param thrust [N], 0 or more
 * @param electricPower that it takes [W]
 * @param limit what it ends at
 */
public record GreatestThrust(
    double speed, double thrust, double electricPower, ThrustLimit limit) {}
