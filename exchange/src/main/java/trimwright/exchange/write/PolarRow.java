package trimwright.exchange.write;

import java.util.Optional;
import trimwright.kernel.section.PointKind;

/**
 * One angle of a section's or a wing's table.
 *
 * @param angleOfAttack [rad]
 * @param lift coefficient [1]
 * @param drag coefficient [1]
 * @param moment coefficient, nose up positive [1]
 * @param minimumPressure lowest pressure coefficient [1]
 * @param converged whether the computation holds at this angle; past the lift limit it does not,
 *     nor where its point was bridged or extended
 * @param kind how the point came about, where boundary layers were asked for
 */
public record PolarRow(
    double angleOfAttack,
    double lift,
    double drag,
    double moment,
    double minimumPressure,
    boolean converged,
    Optional<PointKind> kind) {

  /** A row that is not one of boundary layers. */
  public PolarRow(
      double angleOfAttack,
      double lift,
      double drag,
      double moment,
      double minimumPressure,
      boolean converged) {
    this(angleOfAttack, lift, drag, moment, minimumPressure, converged, Optional.empty());
  }
}
