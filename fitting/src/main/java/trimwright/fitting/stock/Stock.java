package trimwright.fitting.stock;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;

/**
 * What a shop owns. No shim is always at hand and stands in no list.
 *
 * @param boards the boards
 * @param batteries the batteries
 * @param masts the masts
 * @param drives the drives
 * @param fuselages the fuselages
 * @param frontWings the front wings
 * @param stabilizers the stabilizers
 * @param shims the shims
 */
public record Stock(
    List<StockPart<TrackedBoard>> boards,
    List<StockPart<StockBattery>> batteries,
    List<StockPart<Mast>> masts,
    List<StockPart<Drive>> drives,
    List<StockPart<Fuselage>> fuselages,
    List<StockPart<FittedWing>> frontWings,
    List<StockPart<FittedWing>> stabilizers,
    List<StockPart<Shim>> shims) {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if two parts have the same name
   */
  public Stock {
    boards = List.copyOf(boards);
    batteries = List.copyOf(batteries);
    masts = List.copyOf(masts);
    drives = List.copyOf(drives);
    fuselages = List.copyOf(fuselages);
    frontWings = List.copyOf(frontWings);
    stabilizers = List.copyOf(stabilizers);
    shims = List.copyOf(shims);
    Set<String> ids = new HashSet<>();
    Stream.of(boards, batteries, masts, drives, fuselages, frontWings, stabilizers, shims)
        .flatMap(List::stream)
        .forEach(
            part -> {
              if (!ids.add(part.id())) {
                throw new IllegalArgumentException("two parts are called " + part.id());
              }
            });
  }

  /**
   * The same stock with nothing but the named parts where any of a kind is named: what somebody
   * keeps whatever the rest is.
   *
   * @param kept names of parts; empty for all
   * @return the stock
   * @throws IllegalArgumentException if no part has a name
   */
  public Stock keeping(Set<String> kept) {
    for (String id : kept) {
      if (Stream.of(PartKind.values())
          .flatMap(kind -> list(kind).stream())
          .noneMatch(part -> part.id().equals(id))) {
        throw new IllegalArgumentException("no part is called " + id);
      }
    }
    return new Stock(
        keep(boards, kept),
        keep(batteries, kept),
        keep(masts, kept),
        keep(drives, kept),
        keep(fuselages, kept),
        keep(frontWings, kept),
        keep(stabilizers, kept),
        keep(shims, kept));
  }

  private static <P> List<StockPart<P>> keep(List<StockPart<P>> parts, Set<String> kept) {
    List<StockPart<P>> named = parts.stream().filter(part -> kept.contains(part.id())).toList();
    return named.isEmpty() ? parts : named;
  }

  /**
   * The parts of a kind.
   *
   * @param kind which kind
   * @return all of them, those that are out too, in the stock's order
   */
  public List<? extends StockPart<?>> list(PartKind kind) {
    return switch (kind) {
      case BOARD -> boards;
      case BATTERY -> batteries;
      case MAST -> masts;
      case DRIVE -> drives;
      case FUSELAGE -> fuselages;
      case FRONT_WING -> frontWings;
      case STABILIZER -> stabilizers;
      case SHIM -> shims;
    };
  }
}
