package trimwright.kernel.band;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * How each part of a setup is known.
 *
 * @param parts of those that are known better than from their sheets
 */
public record Knowledge(Map<Origin, KnownBy> parts) {
  /** Everything from spec sheets. */
  public static final Knowledge SHEETS = new Knowledge(Map.of());

  /** Copies the map. */
  public Knowledge {
    EnumMap<Origin, KnownBy> copy = new EnumMap<>(Origin.class);
    parts.forEach((origin, by) -> copy.put(origin, Objects.requireNonNull(by, "by")));
    parts = Map.copyOf(copy);
  }

  /**
   * How something is known; from a sheet where nothing is said.
   *
   * @param origin the part
   */
  public KnownBy of(Origin origin) {
    return parts.getOrDefault(origin, KnownBy.SHEET);
  }

  /**
   * The same with one part known another way.
   *
   * @param origin the part
   * @param by how it is known
   */
  public Knowledge with(Origin origin, KnownBy by) {
    EnumMap<Origin, KnownBy> more = new EnumMap<>(Origin.class);
    more.putAll(parts);
    more.put(origin, by);
    return new Knowledge(more);
  }
}
