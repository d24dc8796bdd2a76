package trimwright.kernel.surface;

import java.util.List;

/**
 * Lattice and sections in agreement, or as near to it as was reached.
 *
 * @param wings loads from the front to the back
 * @param departure how far each strip's section leaves its straight line; strips of all wings [rad]
 * @param residual largest difference over the strips between the lift coefficient that the lattice
 *     has and the one that the sections give at the strips' angles, past the stall as {@link
 *     SpanSmoothing} evens it out [1]
 * @param steps of the iteration
 */
public record CoupledFlow(List<WingLoad> wings, double[] departure, double residual, int steps) {
  /** Largest residual of a lift coefficient that counts as agreement [1]. */
  public static final double TOLERANCE = 1e-6;

  /** Whether lattice and sections agree. */
  public boolean converged() {
    return residual <= TOLERANCE;
  }
}
