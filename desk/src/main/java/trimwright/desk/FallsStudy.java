package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.FallAnswer;
import trimwright.exchange.words.RampSource;
import trimwright.kernel.fall.FallCaps;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallSolver;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.trim.CaseSolver;

/** How a case lets its rider fall, and what its remote may be set to for first flights. */
public final class FallsStudy {
  private FallsStudy() {}

  /**
   * The falls of a case.
   *
   * @param caseFile the case as it was read
   * @param ramp of the throttle [s]; empty for the case's, or else the usual one
   * @param mostPower electric power that is permitted [W]; empty for what the drive has
   * @param isStopped asked again and again whether to stop
   * @return its falls; empty where it was stopped
   */
  public static Optional<FallAnswer> find(
      CaseFile caseFile, OptionalDouble ramp, OptionalDouble mostPower, BooleanSupplier isStopped) {
    OptionalDouble own = caseFile.notes().throttleRamp();
    RampSource source =
        ramp.isPresent() ? RampSource.ASKED : own.isPresent() ? RampSource.CASE : RampSource.USUAL;
    FallDrive drive = new FallDrive(ramp.orElse(own.orElse(FallDrive.USUAL_RAMP)), mostPower);
    FallSolver falls = new FallSolver(MotionModel.large(CaseSolver.of(caseFile.rideCase())));
    Optional<FallStudy> study = FallStudy.find(falls, drive, isStopped);
    if (study.isEmpty()) {
      return Optional.empty();
    }
    List<FallAnswer.Nearest> nearest = new ArrayList<>();
    if (!study.get().points().isEmpty() && study.get().caps().size() < Posture.values().length) {
      for (Posture posture : Posture.values()) {
        if (isStopped.getAsBoolean()) {
          return Optional.empty();
        }
        if (study.get().findCaps(posture).isEmpty()) {
          nearest.add(nearest(falls, study.get(), posture));
        }
      }
    }
    return Optional.of(new FallAnswer(study.get(), source, nearest));
  }

  /**
   * The speed at which the gentlest remote comes nearest to both limits: none above the rider's
   * wished speed but the slowest, since nobody's first flights are faster.
   */
  private static FallAnswer.Nearest nearest(FallSolver falls, FallStudy study, Posture posture) {
    RideLimits limits = falls.model().solver().rideCase().limits();
    FallAnswer.Nearest best = null;
    double most = -1;
    double wished = falls.model().solver().rideCase().rider().wishedSpeed();
    for (FallPoint asIs : study.of(posture)) {
      if (best != null && asIs.speed() > wished) {
        break;
      }
      MotionTrim trim = falls.findTrim(asIs.speed()).orElseThrow();
      FallDrive gentle = gentlest(falls, study.drive(), trim);
      FallPoint point = falls.at(trim, posture, gentle);
      double near = near(point, limits);
      if (near > most) {
        most = near;
        best = new FallAnswer.Nearest(point, gentle);
      }
    }
    return best;
  }

  /** The part of what both limits ask for that a fall has, of the worse. */
  private static double near(FallPoint point, RideLimits limits) {
    return Math.min(
        point.noseDrop().bowClearFor() / limits.of(RideLimit.BOW_CLEAR_TIME),
        point.breach().margin() / limits.of(RideLimit.BREACH_TIME));
  }

  /** The slowest ramp, and no more power than the ride takes with a little to spare. */
  private static FallDrive gentlest(FallSolver falls, FallDrive drive, MotionTrim trim) {
    OptionalDouble power =
        falls
            .model()
            .findPowertrain()
            .map(
                p ->
                    OptionalDouble.of(
                        FallCaps.SPARE_POWER * p.electricPower(trim.thrust(), trim.speed())))
            .orElse(OptionalDouble.empty());
    OptionalDouble permitted =
        power.isPresent() && drive.mostPower().isPresent()
            ? OptionalDouble.of(Math.min(power.getAsDouble(), drive.mostPower().getAsDouble()))
            : power;
    return new FallDrive(Math.max(drive.ramp(), FallCaps.SLOWEST_RAMP), permitted);
  }
}
