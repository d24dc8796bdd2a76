package trimwright.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.StockPart;

/** The hardware sets of a space, numbered. Immutable once made; read by several threads. */
final class HardwareList {
  /** More parts of a kind than a stock file may list. */
  private static final long MOST = 1024;

  private final List<SharedHardware> sets = new ArrayList<>();
  private final Map<StockPart<?>, Integer> numbers = new IdentityHashMap<>();
  private final Map<Long, Integer> uppers = new HashMap<>();
  private final Map<Long, Integer> foils = new HashMap<>();
  private final Map<Long, Integer> places = new HashMap<>();

  HardwareList(SetupSpace space) {
    for (PartKind kind : PartKind.values()) {
      for (StockPart<?> part : space.stock().list(kind)) {
        numbers.put(part, numbers.size());
      }
    }
    space
        .boardSets()
        .forEach(
            upper ->
                space
                    .foilSetsOn(upper.mast())
                    .filter(foil -> foil.shim().isEmpty())
                    .forEach(foil -> add(upper, foil)));
  }

  private void add(BoardSet upper, FoilSet foil) {
    int above = uppers.computeIfAbsent(key(upper), absent -> uppers.size());
    int below = foils.computeIfAbsent(key(foil), absent -> foils.size());
    places.put(both(above, below), sets.size());
    sets.add(new SharedHardware(upper, foil.fuselage(), foil.frontWing(), foil.stabilizer()));
  }

  private static long both(int above, int below) {
    return ((long) above << 32) + below;
  }

  private long key(BoardSet upper) {
    return chained(
        number(upper.board()),
        optional(upper.battery()),
        number(upper.mast()),
        optional(upper.drive()));
  }

  private long key(FoilSet foil) {
    return chained(number(foil.fuselage()), number(foil.frontWing()), number(foil.stabilizer()));
  }

  private static long chained(long... parts) {
    long key = 0;
    for (long part : parts) {
      key = 8 * MOST * key + part;
    }
    return key;
  }

  private long number(StockPart<?> part) {
    return numbers.get(part) + 1L;
  }

  private long optional(Optional<? extends StockPart<?>> part) {
    return part.map(this::number).orElse(0L);
  }

  /** The sets. */
  List<SharedHardware> sets() {
    return sets;
  }

  /** The place of the set of a setup's parts; parts are told by being the very same. */
  int placeOf(BoardSet upper, FoilSet foil) {
    return places.get(both(uppers.get(key(upper)), foils.get(key(foil))));
  }
}
