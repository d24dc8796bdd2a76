package trimwright.kernel.hull;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A take-off: the quickest way from rest to flying, at full thrust and the trim of least drag.
 *
 * <p>Absolute figures are rough: {@code dragBand} says by how much all drags may be off either way,
 * and {@code longest} and {@code shortest} what follows for the run. The way one setup compares
 * with another is surer.
 *
 * @param verdict what comes of it
 * @param posture of the rider
 * @param run from rest to where the board leaves the water, rising speeds; up to the speed at which
 *     the wings would carry, where the thrust is short; empty where nothing is carried or all sinks
 * @param liftOff the state just out of the water; empty where it is not reached at any thrust
 * @param hump the largest drag on the way, where the drag falls again behind it
 * @param shortage where and by how much the thrust is short
 * @param length of the run [m]; without a drive none, since the pull decides it
 * @param time it takes [s]
 * @param shortest length with all drags smaller by the band [m]
 * @param longest length with all drags larger by the band [m]; empty where it would not lift then
 * @param mostNeeded largest drag on the way: the thrust or pull that must be had [N]
 * @param dragBand half width of the band of all drags, as a share; chosen [1]
 * @param standing where feet, knees or body may press from rest to lift-off without moving; empty
 *     where they must move on the way
 */
public record TakeOff(
    TakeOffVerdict verdict,
    Posture posture,
    List<RunPoint> run,
    Optional<WaterState> liftOff,
    Optional<Point> hump,
    Optional<Point> shortage,
    OptionalDouble length,
    OptionalDouble time,
    OptionalDouble shortest,
    OptionalDouble longest,
    double mostNeeded,
    double dragBand,
    Optional<FootRange> standing) {

  /** Copies the list. */
  public TakeOff {
    run = List.copyOf(run);
  }

  /**
   * Drag and thrust at a speed.
   *
   * @param speed [m/s]
   * @param drag [N]
   * @param thrust level part of the greatest the drive has, or the pull needed [N]
   */
  public record Point(double speed, double drag, double thrust) {
    /** What the thrust is short by [N]; negative where it is enough. */
    public double shortBy() {
      return drag - thrust;
    }
  }

  /**
   * Least thrust over drag on the way to lift-off.
   *
   * @return a ratio [1]; NaN without a drive or a run
   */
  public double leastThrustRatio() {
    return verdict == TakeOffVerdict.LIFTS_WHEN_PULLED
        ? Double.NaN
        : run.stream()
            .filter(p -> p.state().drag() > 0)
            .mapToDouble(p -> p.greatestThrust() / p.state().drag())
            .min()
            .orElse(Double.NaN);
  }

  /** Whether the craft flies in the end. */
  public boolean lifts() {
    return verdict == TakeOffVerdict.LIFTS || verdict == TakeOffVerdict.LIFTS_WHEN_PULLED;
  }
}
