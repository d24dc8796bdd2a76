package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.StockPart;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;

/**
 * What several riders can share: all parts of a setup but its shim, which is a setting here.
 *
 * @param upper all down to the mast's foot
 * @param fuselage the fuselage
 * @param frontWing the front wing
 * @param stabilizer the stabilizer
 */
record SharedHardware(
    BoardSet upper,
    StockPart<Fuselage> fuselage,
    StockPart<FittedWing> frontWing,
    StockPart<FittedWing> stabilizer) {
  /** The names of its parts, from the board down. */
  List<String> ids() {
    List<String> ids = new ArrayList<>();
    upper.parts().map(StockPart::id).forEach(ids::add);
    ids.add(fuselage.id());
    ids.add(frontWing.id());
    ids.add(stabilizer.id());
    return ids;
  }

  /** Its foil with a shim or none. */
  FoilSet foil(Optional<StockPart<Shim>> shim) {
    return new FoilSet(fuselage, frontWing, stabilizer, shim);
  }
}
