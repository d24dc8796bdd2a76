package trimwright.exchange.read.internal;

import java.util.Map;
import java.util.Optional;
import trimwright.exchange.unit.Unit;

/** Keys carry their unit: the unit of a key by its ending. */
public final class KeyUnits {
  private static final Map<String, Unit> BY_ENDING =
      Map.of(
          "_mm", Unit.MILLIMETRE,
          "_cm2", Unit.SQUARE_CENTIMETRE,
          "_l", Unit.LITRE,
          "_deg", Unit.DEGREE,
          "_kmh", Unit.KILOMETRE_PER_HOUR,
          "_c", Unit.CELSIUS,
          "_g_kg", Unit.GRAM_PER_KILOGRAM,
          "_wh", Unit.WATT_HOUR,
          "_percent", Unit.PERCENT);

  private KeyUnits() {}

  /**
   * The unit of a key, where it is not SI already.
   *
   * @param key a key's own name, such as {@code length_mm}
   */
  public static Optional<Unit> find(String key) {
    return BY_ENDING.entrySet().stream()
        .filter(entry -> key.endsWith(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** A key's value in SI. */
  public static double toSi(String key, double value) {
    return find(key).map(unit -> unit.toSi(value)).orElse(value);
  }
}
