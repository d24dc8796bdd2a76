package trimwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.ThrottleCut;
import trimwright.kernel.play.Play;
import trimwright.kernel.play.PlaySolver;
import trimwright.kernel.water.ChopWave;

/**
 * One thing that can happen on a ride, as the Bench plays it.
 *
 * @param play what
 * @param speed at which it begins [m/s]
 * @param drive the remote's settings
 * @param trace the motion; empty where the speed has no trim
 * @param cut what the feet have to do when the thrust is gone; empty without a trim
 * @param waves the chop's waves where it is played; none otherwise
 */
public record BenchMotion(
    Play play,
    double speed,
    FallDrive drive,
    Optional<MotionTrace> trace,
    Optional<ThrottleCut> cut,
    List<ChopWave> waves) {
  /** Copies the list. */
  public BenchMotion {
    waves = List.copyOf(waves);
  }

  /**
   * Plays.
   *
   * @param caseFile the case
   * @param plays of its ride
   * @param play what
   * @param speed [m/s], above 0
   * @return what happened
   */
  static BenchMotion of(CaseFile caseFile, PlaySolver plays, Play play, double speed) {
    FallDrive drive = drive(caseFile);
    Optional<MotionTrim> trim = plays.model().findTrim(speed);
    return new BenchMotion(
        play,
        speed,
        drive,
        trim.map(t -> plays.play(play, t, drive)),
        trim.map(t -> ThrottleCut.of(plays.model(), t)),
        play == Play.CHOP ? plays.chop().waves() : List.of());
  }

  /**
   * The remote's settings as a case gives them.
   *
   * @param caseFile the case
   * @return its throttle ramp, or the usual one; all the power there is
   */
  private static FallDrive drive(CaseFile caseFile) {
    return new FallDrive(
        caseFile.notes().throttleRamp().orElse(FallDrive.USUAL_RAMP), OptionalDouble.empty());
  }
}
