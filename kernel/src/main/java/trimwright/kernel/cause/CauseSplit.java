package trimwright.kernel.cause;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** Splits what a rider feels into the part of the speed ridden and the part of the set. */
public final class CauseSplit {
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
    TrimOutcome ridden = solver.trim(riddenSpeed);
    TrimOutcome wished = solver.trim(solver.rideCase().rider().wishedSpeed());
    return along(solver, List.of(ridden), wished, measuredPitch).get(0);
  }

  /**
   * The split at each of several speeds, against the rider's wishes: what they share, the trim at
   * the wished speed and the search for the lowest speed that flies, is done once.
   *
   * @param solver of the case
   * @param ridden outcomes at the speeds ridden, from this solver
   * @param wished the outcome at the rider's wished speed, from this solver
   * @param measuredPitch deck pitch as logged [rad], where there is a log
   * @return one per speed ridden, in their order
   */
  public static List<CauseOutcome> along(
      CaseSolver solver,
      List<TrimOutcome> ridden,
      TrimOutcome wished,
      OptionalDouble measuredPitch) {
    LowestFlight flight = new LowestFlight(solver);
    return ridden.stream().map(r -> split(solver, r, wished, measuredPitch, flight)).toList();
  }

  private static CauseOutcome split(
      CaseSolver solver,
      TrimOutcome ridden,
      TrimOutcome wished,
      OptionalDouble measuredPitch,
      LowestFlight flight) {
    Optional<TrimOutcome.NoTrim> riddenFails = findNoTrim(ridden);
    Optional<TrimOutcome.NoTrim> wishedFails = findNoTrim(wished);
    if (riddenFails.isPresent() || wishedFails.isPresent()) {
      return new CauseOutcome.NoSplit(
          riddenFails, wishedFails, fliesFrom(flight, riddenFails, wishedFails));
    }
    Rider rider = solver.rideCase().rider();
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
      LowestFlight flight,
      Optional<TrimOutcome.NoTrim> ridden,
      Optional<TrimOutcome.NoTrim> wished) {
    OptionalDouble slow =
        Stream.concat(ridden.stream(), wished.stream())
            .filter(none -> !LowestFlight.flies(none))
            .mapToDouble(TrimOutcome::speed)
            .max();
    return slow.isPresent() ? flight.above(slow.getAsDouble()) : OptionalDouble.empty();
  }
}
