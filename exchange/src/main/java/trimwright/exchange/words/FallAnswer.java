package trimwright.exchange.words;

import java.util.List;
import java.util.Optional;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.hull.Posture;

/**
 * The falls of a case, and how near it comes where no cap brings it inside.
 *
 * @param study the falls and the caps
 * @param ramp who says the throttle's ramp
 * @param nearest at most one per posture without caps
 */
public record FallAnswer(FallStudy study, RampSource ramp, List<Nearest> nearest) {
  /** Copies the list. */
  public FallAnswer {
    nearest = List.copyOf(nearest);
  }

  /**
   * The fall that comes nearest to the limits of first flights.
   *
   * @param point the fall
   * @param drive the remote's settings with which it does
   */
  public record Nearest(FallPoint point, FallDrive drive) {}

  /** How near a posture comes; empty where caps bring it inside, or nothing is rideable. */
  public Optional<Nearest> findNearest(Posture posture) {
    return nearest.stream().filter(n -> n.point().posture() == posture).findFirst();
  }
}
