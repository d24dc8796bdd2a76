package trimwright.kernel.range;

import java.util.List;
import java.util.Optional;
import trimwright.kernel.propel.PowerBasis;

/**
 * What a battery is good for on a setup.
 *
 * @param basis what power is computed from, with its deviation; no ride has measured it
 * @param usableEnergy of the full battery at its temperature [J]
 * @param capacityShare share of the rated capacity at that temperature [1]
 * @param points one for each speed asked for, in order; empty where there is no trim
 * @param longest the speed of the longest ride, where there is any
 * @param farthest the speed of the longest way in still water
 * @param home the way home, where one was given and there is a speed that makes headway
 */
public record RideRange(
    PowerBasis basis,
    double usableEnergy,
    double capacityShare,
    List<Optional<RangePoint>> points,
    Optional<RangePoint> longest,
    Optional<RangePoint> farthest,
    Optional<HomeRide> home) {
  /** Copies the list. */
  public RideRange {
    points = List.copyOf(points);
  }
}
