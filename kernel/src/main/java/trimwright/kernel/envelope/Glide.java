package trimwright.kernel.envelope;

import java.util.List;
import java.util.Optional;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * What the foil does by itself: weight over drag, and the way on which speed is lost without
 * thrust. The drag is that of the trimmed ride at each speed; letting go of thrust also moves the
 * feet, which motion and not balance shows.
 *
 * @param bestRatio largest weight over drag [1]
 * @param bestRatioSpeed its speed [m/s]
 * @param leastPower least drag times speed [W]: what pumping or a tow has to give at least, at the
 *     foil
 * @param leastPowerSpeed its speed [m/s]
 * @param secondsToStall from the wished speed down to the stall, without thrust [s]
 * @param metresToStall the way gone meanwhile [m]
 */
public record Glide(
    double bestRatio,
    double bestRatioSpeed,
    double leastPower,
    double leastPowerSpeed,
    double secondsToStall,
    double metresToStall) {

  /**
   * The glide of a case.
   *
   * @param outcomes trimmed rides over speed, rising, close enough for the trapezoidal rule
   * @param mass of rider, kit and all parts [kg]
   * @param from speed at which thrust ends [m/s]
   * @param stall speed at which the wings carry no longer [m/s]
   * @return empty with fewer than three points above the stall, or where none lies at the speed
   */
  public static Optional<Glide> of(
      List<TrimOutcome> outcomes, double mass, double from, double stall) {
    List<TrimPoint> points = outcomes.stream().map(Glide::point).flatMap(Optional::stream).toList();
    if (points.size() < 3 || points.get(points.size() - 1).speed() < from) {
      return Optional.empty();
    }
    double weight = mass * Craft.GRAVITY;
    TrimPoint ratio = points.get(0);
    TrimPoint power = points.get(0);
    double seconds = 0;
    double metres = 0;
    for (int i = 0; i < points.size(); i++) {
      TrimPoint p = points.get(i);
      if (p.drag() < ratio.drag()) {
        ratio = p;
      }
      if (p.drag() * p.speed() < power.drag() * power.speed()) {
        power = p;
      }
      if (i > 0) {
        TrimPoint before = points.get(i - 1);
        double low = Math.max(stall, before.speed());
        double high = Math.min(from, p.speed());
        if (high > low) {
          // m dV/dt = -D: trapezoidal in 1/D over the speed
          double mean = 0.5 * (1 / before.drag() + 1 / p.drag());
          seconds += mass * (high - low) * mean;
          metres += mass * 0.5 * (high * high - low * low) * mean;
        }
      }
    }
    return Optional.of(
        new Glide(
            weight / ratio.drag(),
            ratio.speed(),
            power.drag() * power.speed(),
            power.speed(),
            seconds,
            metres));
  }

  private static Optional<TrimPoint> point(TrimOutcome outcome) {
    return outcome.findPoint().isPresent()
        ? outcome.findPoint()
        : outcome instanceof TrimOutcome.NoTrim none ? none.wouldNeed() : Optional.empty();
  }
}
