package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.StockPart;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;

/**
 * A front wing and a stabilizer on a fuselage, with the shims that fit.
 *
 * @param fuselage the fuselage
 * @param frontWing the front wing
 * @param stabilizer the stabilizer
 * @param shims none among them
 */
public record WingPair(
    StockPart<Fuselage> fuselage,
    StockPart<FittedWing> frontWing,
    StockPart<FittedWing> stabilizer,
    List<Optional<StockPart<Shim>>> shims) {
  /** Copies the list. */
  public WingPair {
    shims = List.copyOf(shims);
  }

  private record Key(
      StockPart<Fuselage> fuselage,
      StockPart<FittedWing> frontWing,
      StockPart<FittedWing> stabilizer) {}

  /** All pairs of a space in its own order, each with its shims. */
  public static List<WingPair> listOf(SetupSpace space) {
    Map<Key, List<Optional<StockPart<Shim>>>> shims = new LinkedHashMap<>();
    space
        .foilSets()
        .forEach(
            foil ->
                shims
                    .computeIfAbsent(
                        new Key(foil.fuselage(), foil.frontWing(), foil.stabilizer()),
                        key -> new ArrayList<>())
                    .add(foil.shim()));
    List<WingPair> pairs = new ArrayList<>();
    shims.forEach(
        (key, list) -> pairs.add(new WingPair(key.fuselage, key.frontWing, key.stabilizer, list)));
    return pairs;
  }

  /** The foil with one of the shims. */
  public FoilSet with(Optional<StockPart<Shim>> shim) {
    return new FoilSet(fuselage, frontWing, stabilizer, shim);
  }
}
