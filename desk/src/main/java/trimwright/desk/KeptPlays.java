package trimwright.desk;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.play.Play;
import trimwright.kernel.play.PlaySolver;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;

/**
 * Plays of the case that was asked for last: its tables are kept, so that another play or speed of
 * the same case costs the motion alone. May be shared between threads.
 */
public final class KeptPlays {
  private record Kept(RideCase rideCase, Posture posture, PlaySolver plays) {}

  private volatile Kept kept;

  /** Keeps nothing yet. */
  public KeptPlays() {
    // Nothing to set.
  }

  /**
   * Plays.
   *
   * @param caseFile the case
   * @param play what
   * @param speed [m/s], above 0
   * @param isStopped asked between the parts whether to stop
   * @return empty where it was stopped
   */
  public Optional<BenchMotion> find(
      CaseFile caseFile, Play play, double speed, BooleanSupplier isStopped) {
    Kept last = kept;
    Posture posture = caseFile.notes().posture().body();
    if (last == null || last.posture() != posture || !last.rideCase().equals(caseFile.rideCase())) {
      if (isStopped.getAsBoolean()) {
        return Optional.empty();
      }
      CaseSolver solver = CaseSolver.of(caseFile.rideCase());
      if (isStopped.getAsBoolean()) {
        return Optional.empty();
      }
      MotionModel model = MotionModel.large(solver).with(posture);
      last = new Kept(caseFile.rideCase(), posture, new PlaySolver(model));
      kept = last;
    }
    return isStopped.getAsBoolean()
        ? Optional.empty()
        : Optional.of(BenchMotion.of(caseFile, last.plays(), play, speed));
  }
}
