package trimwright.kernel.hull;

import java.util.List;
import java.util.Optional;

/**
 * The run of a take-off with the throttle brought up evenly over a stated time instead of full
 * thrust at once: every point of the run keeps its trim and drag, the thrust is the ramp's share of
 * the greatest. Stepped in time by the mid-point rule.
 *
 * @param ramp time over which the throttle comes up [s]
 * @param length from rest to lift-off [m]
 * @param time [s]
 */
public record RampedRun(double ramp, double length, double time) {
  private static final double STEP = 0.01;

  /** Longer than anybody holds on [s]. */
  private static final double LONGEST = 120;

  /**
   * The run with a ramp.
   *
   * @param takeOff of a drive, at full thrust
   * @param ramp 0 or more [s]
   * @param mostAcceleration that the rider takes [m/s²]
   * @return empty where the take-off does not lift by its own drive, or not within two minutes
   */
  public static Optional<RampedRun> of(TakeOff takeOff, double ramp, double mostAcceleration) {
    if (takeOff.verdict() != TakeOffVerdict.LIFTS) {
      return Optional.empty();
    }
    List<RunPoint> run = takeOff.run();
    double end = run.get(run.size() - 1).state().speed();
    double time = 0;
    double way = 0;
    double speed = 0;
    while (time < LONGEST) {
      double first = acceleration(run, speed, share(time, ramp), mostAcceleration);
      double halfWay = Math.max(0, speed + 0.5 * STEP * first);
      double middle = acceleration(run, halfWay, share(time + 0.5 * STEP, ramp), mostAcceleration);
      double next = Math.max(0, speed + STEP * middle);
      if (next >= end) {
        double part = (end - speed) / (next - speed);
        return Optional.of(
            new RampedRun(ramp, way + 0.5 * part * STEP * (speed + end), time + part * STEP));
      }
      way += 0.5 * STEP * (speed + next);
      speed = next;
      time += STEP;
    }
    return Optional.empty();
  }

  private static double share(double time, double ramp) {
    return time < ramp ? time / ramp : 1;
  }

  private static double acceleration(List<RunPoint> run, double speed, double share, double most) {
    int last = run.size() - 1;
    double step = run.get(last).state().speed() / last;
    int i = Math.min(last - 1, (int) (speed / step));
    double t = Math.min(1, speed / step - i);
    RunPoint a = run.get(i);
    RunPoint b = run.get(i + 1);
    double thrust = a.greatestThrust() + t * (b.greatestThrust() - a.greatestThrust());
    double drag = a.state().drag() + t * (b.state().drag() - a.state().drag());
    double mass = a.state().mass() + t * (b.state().mass() - a.state().mass());
    return Math.min(most, (share * thrust - drag) / mass);
  }
}
