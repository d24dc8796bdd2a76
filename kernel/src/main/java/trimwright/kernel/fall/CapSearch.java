package trimwright.kernel.fall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.propel.Powertrain;

/**
 * Looks for caps: the fastest speed first, then the quickest ramp, then the greatest power. The
 * ramp counts for both margins, the power for the breach alone.
 */
record CapSearch(
    FallSolver falls, RideLimits limits, Posture posture, FallDrive drive, List<MotionTrim> trims) {
  /** Ramps that a remote may be set to [s]. */
  private static final double[] RAMPS = {0.3, 0.5, 0.75, 1, 1.5, 2, FallCaps.SLOWEST_RAMP};

  private static final int HALVINGS = 7;

  Optional<FallCaps> find(BooleanSupplier isStopped) {
    FallCaps best = null;
    for (double ramp : ramps()) {
      if (isStopped.getAsBoolean()) {
        return Optional.empty();
      }
      FallCaps found = with(ramp);
      if (found != null && (best == null || found.speed() > best.speed() + 1e-9)) {
        best = found;
      }
      if (best != null && best.whole()) {
        break;
      }
    }
    return Optional.ofNullable(best);
  }

  private List<Double> ramps() {
    List<Double> ramps = new ArrayList<>(List.of(drive.ramp()));
    for (double ramp : RAMPS) {
      if (ramp > drive.ramp()) {
        ramps.add(ramp);
      }
    }
    return ramps;
  }

  /** The fastest cap with a ramp; null where not even the slowest speed lies inside. */
  private FallCaps with(double ramp) {
    FallCaps found = null;
    double needed = 0;
    double permitted = drive.mostPower().orElse(Double.POSITIVE_INFINITY);
    for (int i = 0; i < trims.size(); i++) {
      MotionTrim trim = trims.get(i);
      NoseDrop drop = falls.noseDrop(trim, posture, new FallDrive(ramp, drive.mostPower()));
      if (limits.breaks(RideLimit.BOW_CLEAR_TIME, drop.bowClearFor())) {
        break;
      }
      Optional<Powertrain> powertrain = falls.model().findPowertrain();
      if (powertrain.isPresent()) {
        needed =
            Math.max(
                needed,
                FallCaps.SPARE_POWER * powertrain.get().electricPower(trim.thrust(), trim.speed()));
      }
      permitted = Math.min(permitted, mostPower(trim, ramp, needed, permitted));
      if (permitted < needed || Double.isNaN(permitted)) {
        break;
      }
      found =
          new FallCaps(
              posture,
              trim.speed(),
              i == trims.size() - 1,
              ramp,
              Double.isInfinite(permitted) ? OptionalDouble.empty() : OptionalDouble.of(permitted));
    }
    return found;
  }

  /** The greatest power with which the breach comes late enough; NaN where none is. */
  private double mostPower(MotionTrim trim, double ramp, double needed, double permitted) {
    if (staysIn(trim, ramp, permitted)) {
      return permitted;
    }
    if (!staysIn(trim, ramp, needed)) {
      return Double.NaN;
    }
    double low = needed;
    double high =
        Double.isInfinite(permitted)
            ? falls
                .model()
                .findPowertrain()
                .map(p -> p.greatestThrust(trim.speed()).electricPower())
                .orElse(needed)
            : permitted;
    for (int i = 0; i < HALVINGS && high > low; i++) {
      double middle = 0.5 * (low + high);
      if (staysIn(trim, ramp, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean staysIn(MotionTrim trim, double ramp, double power) {
    OptionalDouble most =
        Double.isInfinite(power) ? OptionalDouble.empty() : OptionalDouble.of(power);
    Breach breach = falls.breach(trim, posture, new FallDrive(ramp, most));
    return !limits.breaks(RideLimit.BREACH_TIME, breach.margin());
  }
}
