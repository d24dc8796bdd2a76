package trimwright.kernel.water;

/**
 * What the computation needs to know of the water.
 *
 * @param density [kg/m³]
 * @param kinematicViscosity [m²/s]
 * @param vapourPressure [Pa]
 */
public record Water(double density, double kinematicViscosity, double vapourPressure) {}
