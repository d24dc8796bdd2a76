package trimwright.kernel.trim;

import java.util.List;
import trimwright.kernel.rig.RideCase;

/**
 * Solves one case. Building a solver computes the lifting surfaces' response over pitch once; every
 * speed asked for afterwards is cheap. A solver holds no shared state but is not safe for use by
 * several threads at once.
 */
public final class CaseSolver {
  private CaseSolver() {}

  /**
   * A solver with the standard lattice.
   *
   * @param rideCase the case
   * @return a solver for it
   */
  public static CaseSolver of(RideCase rideCase) {
    throw new UnsupportedOperationException("skeleton");
  }

  /**
   * The trim at one speed.
   *
   * @param speed through the water [m/s], above 0
   * @return a trim point or the reason why there is none
   */
  public TrimOutcome trim(double speed) {
    throw new UnsupportedOperationException("skeleton");
  }

  /**
   * The curve over given speeds, with the speeds that people ask for.
   *
   * @param speeds [m/s], rising
   * @return the curve
   */
  public Curve curve(List<Double> speeds) {
    throw new UnsupportedOperationException("skeleton");
  }
}
