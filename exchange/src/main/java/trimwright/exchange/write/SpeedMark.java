package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.exchange.words.Shown;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.envelope.SlowFlight;
import trimwright.kernel.hull.WaterState;
import trimwright.kernel.turn.TurnPoint;

/**
 * A speed at which something begins or ends.
 *
 * @param id names its symbol
 * @param label a word or two beside the symbol
 * @param name what it is in full
 * @param speed [m/s]
 */
record SpeedMark(String id, String label, String name, double speed) {
  private static final double BANK_SHOWN = Math.toRadians(30);
  private static final double SAME_BANK = 1e-6;

  /** The marks of an envelope, the slowest first. */
  static List<SpeedMark> listFor(Envelope envelope, OptionalDouble fastest) {
    List<SpeedMark> marks = new ArrayList<>();
    envelope
        .takeOff()
        .liftOff()
        .filter(s -> envelope.takeOff().lifts())
        .map(WaterState::speed)
        .ifPresent(v -> marks.add(new SpeedMark("take_off", "lift-off", "Leaves the water", v)));
    envelope.slowFlight().ifPresent(slow -> slow(marks, slow));
    envelope
        .straight()
        .map(TurnPoint::cavitationSpeedRatio)
        .filter(Double::isFinite)
        .ifPresent(
            ratio ->
                marks.add(
                    new SpeedMark(
                        "cavitation",
                        "cavitation",
                        "Cavitation, at the angles of the wished speed",
                        ratio * envelope.speed())));
    envelope
        .range()
        .ifPresent(
            range -> {
              range
                  .longest()
                  .ifPresent(
                      p ->
                          marks.add(
                              new SpeedMark(
                                  "longest", "longest", "Battery lasts longest", p.speed())));
              range
                  .farthest()
                  .ifPresent(
                      p ->
                          marks.add(
                              new SpeedMark(
                                  "farthest", "farthest", "Battery carries farthest", p.speed())));
            });
    fastest.ifPresent(
        v -> marks.add(new SpeedMark("fastest", "fastest", "Fastest that the drive pushes", v)));
    marks.sort(Comparator.comparingDouble(SpeedMark::speed));
    return marks;
  }

  private static void slow(List<SpeedMark> marks, SlowFlight slow) {
    marks.add(new SpeedMark("stall", "stall", "Stall straight ahead", slow.stallSpeed()));
    slow.banked().stream()
        .filter(b -> Math.abs(b.bank() - BANK_SHOWN) < SAME_BANK)
        .forEach(
            b -> {
              String bank = Shown.decimals(Shown.degrees(b.bank()), 0) + "°";
              String name = b.circle() ? "Slowest circle banked " + bank : "Stall banked " + bank;
              marks.add(new SpeedMark("banked", "at " + bank, name, b.speed()));
            });
  }
}
