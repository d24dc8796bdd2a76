package trimwright.exchange.read.internal;

import java.util.Map;
import java.util.Optional;
import trimwright.exchange.unit.Unit;

/** Keys carry their unit: the unit of a key by its ending. */
public final class KeyUnits {
  private static final Map<String, Unit> BY_ENDING =
      Map.ofEntries(
          Map.entry("_mm", Unit.MILLIMETRE),
          Map.entry("_km", Unit.KILOMETRE),
          Map.entry("_cm2", Unit.SQUARE_CENTIMETRE),
          Map.entry("_l", Unit.LITRE),
          Map.entry("_deg", Unit.DEGREE),
          Map.entry("_kmh", Unit.KILOMETRE_PER_HOUR),
          Map.entry("_c", Unit.CELSIUS),
          Map.entry("_g_kg", Unit.GRAM_PER_KILOGRAM),
          Map.entry("_wh", Unit.WATT_HOUR),
          Map.entry("_mohm", Unit.MILLIOHM),
          Map.entry("_rpm", Unit.REVOLUTION_PER_MINUTE),
          Map.entry("_s", Unit.SECOND),
          Map.entry("_m_s2", Unit.METRE_PER_SECOND_SQUARED),
          Map.entry("_percent", Unit.PERCENT));

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
