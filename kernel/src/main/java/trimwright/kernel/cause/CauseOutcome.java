package trimwright.kernel.cause;

import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimPoint;

/** What the question for the cause gives. */
public sealed interface CauseOutcome {

  /**
   * The split.
   *
   * @param ridden trim point at the speed ridden
   * @param wished trim point at the wished speed
   * @param pitch deck pitch [rad]
   * @param footShare [1]
   * @param footPressure foot-pressure centre ahead of the mast's axis [m]
   */
  record Split(
      TrimPoint ridden,
      TrimPoint wished,
      CauseParts pitch,
      CauseParts footShare,
      CauseParts footPressure)
      implements CauseOutcome {}

  /**
   * No split, because one of the two speeds has no trim point.
   *
   * @param speed the speed without a trim point [m/s]
   * @param wishedSpeed whether it is the wished speed (otherwise the one ridden)
   * @param reason why it has none
   */
  record NoSplit(double speed, boolean wishedSpeed, NoTrimReason reason) implements CauseOutcome {}
}
