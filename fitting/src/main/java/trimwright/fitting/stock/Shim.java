package trimwright.fitting.stock;

/**
 * A shim.
 *
 * @param angle added to the stabilizer's setting, leading edge up positive [rad]
 */
public record Shim(double angle) {}
