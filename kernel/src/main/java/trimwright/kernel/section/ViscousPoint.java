package trimwright.kernel.section;

/**
 * A section at one angle of attack, Reynolds number and finish, with its boundary layers.
 * Coefficients on the chord; places in chords behind the leading edge.
 *
 * @param angle angle of attack, leading edge up positive [rad]
 * @param lift lift coefficient, from the pressures [1]
 * @param drag drag coefficient, from the far wake [1]
 * @param moment moment coefficient about the quarter chord, nose up positive, from the pressures
 *     [1]
 * @param minimumPressure lowest pressure coefficient on the surface [1]
 * @param transitionAbove where turbulence begins on the upper surface; 1 where it does not
 * @param transitionBelow the same on the lower surface
 * @param separationAbove where the turbulent layer of the upper surface leaves it; 1 where it does
 *     not
 * @param separationBelow the same on the lower surface
 * @param converged whether layers and outer flow agree
 * @param steps steps taken [1]
 */
public record ViscousPoint(
    double angle,
    double lift,
    double drag,
    double moment,
    double minimumPressure,
    double transitionAbove,
    double transitionBelow,
    double separationAbove,
    double separationBelow,
    boolean converged,
    int steps) {}
