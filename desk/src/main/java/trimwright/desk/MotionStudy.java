package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.MannersAt;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;

/** How a case moves about its trims. */
public final class MotionStudy {
  private MotionStudy() {}

  /**
   * The manners of a case over speed.
   *
   * @param caseFile the case as it was read
   * @param range the speeds
   * @param isStopped asked before each speed whether to stop
   * @return one per speed; empty where it was stopped
   */
  public static Optional<List<MannersAt>> find(
      CaseFile caseFile, SpeedRange range, BooleanSupplier isStopped) {
    CaseSolver solver = CaseSolver.of(caseFile.rideCase());
    MotionModel model = MotionModel.small(solver).with(caseFile.notes().posture().body());
    List<MannersAt> points = new ArrayList<>();
    for (double speed : range.list()) {
      if (isStopped.getAsBoolean()) {
        return Optional.empty();
      }
      TrimOutcome outcome = solver.trim(speed);
      points.add(
          new MannersAt(
              outcome,
              outcome.findPoint().isPresent() ? model.findManners(speed) : Optional.empty()));
    }
    return Optional.of(points);
  }
}
