package trimwright.exchange.write;

/**
 * One angle of a section's or a wing's table.
 *
 * @param angleOfAttack [rad]
 * @param lift coefficient [1]
 * @param drag coefficient [1]
 * @param moment coefficient, nose up positive [1]
 * @param minimumPressure lowest pressure coefficient [1]
 * @param converged whether the computation holds at this angle; past the lift limit it does not
 */
public record PolarRow(
    double angleOfAttack,
    double lift,
    double drag,
    double moment,
    double minimumPressure,
    boolean converged) {}
