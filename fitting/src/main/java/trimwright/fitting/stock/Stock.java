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
