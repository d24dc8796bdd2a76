package trimwright.kernel.cause;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** Splits what a rider feels into the part of the speed ridden and the part of the set. */
public final class CauseSplit {
  /** Step of the search for the lowest speed that flies, as a ratio [1]. */
  private static final double SEARCH_STEP = 1.05;

  /** No faster than any foil board is ridden [m/s]: 100 km/h. */
  private static final double FASTEST = 100 / 3.6;

  /** Width of the last bracket of speed [m/s]: less than is ever shown. */
  private static final double SPEED_TOLERANCE = 1e-3;

  private CauseSplit() {}

  /**
   * The split at a speed, against the rider's wishes.
   *
   * @param solver of the case
   * @param riddenSpeed [m/s], above 0
   * @param measuredPitch deck pitch as logged [rad], where there is a log
   * @return the split, or which speeds have no trim point
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public static CauseOutcome of(
      CaseSolver solver, double riddenSpeed, OptionalDouble measuredPitch) {
    Rider rider = solver.rideCase().rider();
    TrimOutcome ridden = solver.trim(riddenSpeed);
    TrimOutcome wished = solver.trim(rider.wishedSpeed());
    Optional<TrimOutcome.NoTrim> riddenFails = findNoTrim(ridden);
    Optional<TrimOutcome.NoTrim> wishedFails = findNoTrim(wished);
    if (riddenFails.isPresent() || wishedFails.isPresent()) {
      return new CauseOutcome.NoSplit(
          riddenFails, wishedFails, fliesFrom(solver, riddenFails, wishedFails));
    }
    TrimPoint at = ridden.findPoint().orElseThrow();
    TrimPoint wish = wished.findPoint().orElseThrow();
    double back = rider.backFoot() - solver.rideCase().setup().board().track();
    return new CauseOutcome.Split(
        at,
        wish,
        CauseParts.of(at.pitch(), wish.pitch(), rider.wishedPitch(), measuredPitch),
        CauseParts.of(
            at.footShare(), wish.footShare(), rider.wishedFootShare(), OptionalDouble.empty()),
        CauseParts.of(
            at.footPressureAheadOfMast(),
            wish.footPressureAheadOfMast(),
            back + rider.wishedFootShare() * rider.stance(),
            OptionalDouble.empty()));
  }

  private static Optional<TrimOutcome.NoTrim> findNoTrim(TrimOutcome outcome) {
    return outcome instanceof TrimOutcome.NoTrim none ? Optional.of(none) : Optional.empty();
  }

  private static OptionalDouble fliesFrom(
      CaseSolver solver, Optional<TrimOutcome.NoTrim> ridden, Optional<TrimOutcome.NoTrim> wished) {
    OptionalDouble slow =
        Stream.concat(ridden.stream(), wished.stream())
            .filter(none -> !flies(none))
            .mapToDouble(TrimOutcome::speed)
            .max();
    if (slow.isEmpty()) {
      return OptionalDouble.empty();
    }
    double low = slow.getAsDouble();
    for (double high = low * SEARCH_STEP; high <= FASTEST; high *= SEARCH_STEP) {
      if (flies(solver.trim(high))) {
        while (high - low > SPEED_TOLERANCE) {
          double middle = 0.5 * (low + high);
          if (flies(solver.trim(middle))) {
            high = middle;
          } else {
            low = middle;
          }
        }
        return OptionalDouble.of(high);
      }
      low = high;
    }
    return OptionalDouble.empty();
  }

  /** Whether the wings carry the weight without stall, held by feet and drive or not. */
  private static boolean flies(TrimOutcome outcome) {
    return !(outcome instanceof TrimOutcome.NoTrim none
        && (none.reason() == NoTrimReason.TOO_SLOW || none.reason() == NoTrimReason.STALLED));
  }
}
