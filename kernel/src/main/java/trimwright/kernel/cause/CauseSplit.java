package trimwright.kernel.cause;

import java.util.OptionalDouble;
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
   * @return the split, or which speed has no trim point
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public static CauseOutcome of(
      CaseSolver solver, double riddenSpeed, OptionalDouble measuredPitch) {
    Rider rider = solver.rideCase().rider();
    TrimOutcome ridden = solver.trim(riddenSpeed);
    TrimOutcome wished = solver.trim(rider.wishedSpeed());
    if (wished instanceof TrimOutcome.NoTrim none) {
      return new CauseOutcome.NoSplit(rider.wishedSpeed(), true, none.reason());
    }
    if (ridden instanceof TrimOutcome.NoTrim none) {
      return new CauseOutcome.NoSplit(riddenSpeed, false, none.reason());
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
}
