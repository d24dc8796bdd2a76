package trimwright.kernel.hull;

import java.util.Optional;

/**
 * One speed of a run.
 *
 * @param state at the trim of least drag
 * @param greatestThrust level part of the drive's [N]; without a drive the pull that is needed
 * @param feet where the foot-pressure centre may lie so that the board keeps a workable trim and
 *     the thrust overcomes the drag; empty where no trim does
 * @param distance from the start [m]; infinite beyond a speed that is not reached
 * @param time from the start [s]; infinite likewise
 */
public record RunPoint(
    WaterState state,
    double greatestThrust,
    Optional<FootRange> feet,
    double distance,
    double time) {

  /** What the thrust has over [N]; negative where it is short. */
  public double surplus() {
    return greatestThrust - state.drag();
  }
}
