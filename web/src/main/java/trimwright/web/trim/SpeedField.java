package trimwright.web.trim;

import java.util.OptionalDouble;

/**
 * The field for the speed ridden.
 *
 * @param typed what stands in the field, kept as it was typed
 * @param problem what is wrong with it, empty where nothing is
 * @param speedKmh the speed it means, where it means one
 */
public record SpeedField(String typed, String problem, OptionalDouble speedKmh) {
  /**
   * Slowest speed that can be asked for [km/h]: below it no hydrofoil of any size carries a rider.
   */
  public static final int SLOWEST_KMH = 5;

  /**
   * Fastest speed that can be asked for [km/h]: above it the computation leaves out cavitation,
   * which rules there.
   */
  public static final int FASTEST_KMH = 60;

  private static final int LONGEST = 20;

  static SpeedField of(double speedKmh) {
    return new SpeedField(Figures.shortest(speedKmh), "", OptionalDouble.of(speedKmh));
  }

  /**
   * Reads what was typed; a decimal comma is as good as a point. The step comes from the minus and
   * plus buttons.
   */
  static SpeedField read(String typed, int stepKmh) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return new SpeedField(
          text, "Type the speed ridden in km/h. " + range(), OptionalDouble.empty());
    }
    double speed;
    try {
      if (text.length() > LONGEST || !text.matches("[-+]?[0-9]*[.,]?[0-9]*")) {
        return notANumber(text);
      }
      speed = Double.parseDouble(text.replace(',', '.'));
    } catch (NumberFormatException e) {
      return notANumber(text);
    }
    if (speed < SLOWEST_KMH || speed > FASTEST_KMH) {
      return new SpeedField(
          text, "The speed ridden was " + text + " km/h. " + range(), OptionalDouble.empty());
    }
    if (stepKmh == 0) {
      return new SpeedField(text, "", OptionalDouble.of(speed));
    }
    return of(Math.min(FASTEST_KMH, Math.max(SLOWEST_KMH, speed + stepKmh)));
  }

  private static SpeedField notANumber(String text) {
    return new SpeedField(
        text, "The speed ridden must be a number such as 22. " + range(), OptionalDouble.empty());
  }

  private static String range() {
    return "It may be from " + SLOWEST_KMH + " to " + FASTEST_KMH + " km/h.";
  }
}
