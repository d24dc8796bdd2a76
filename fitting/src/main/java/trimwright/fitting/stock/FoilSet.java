package trimwright.fitting.stock;

import java.util.Optional;
import java.util.stream.Stream;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;

/**
 * The lower half of a setup: fuselage, wings and shim.
 *
 * @param fuselage the fuselage
 * @param frontWing the front wing
 * @param stabilizer the stabilizer
 * @param shim the shim; empty for none
 */
public record FoilSet(
    StockPart<Fuselage> fuselage,
    StockPart<FittedWing> frontWing,
    StockPart<FittedWing> stabilizer,
    Optional<StockPart<Shim>> shim) {
  /** What the shim adds to the stabilizer's setting, leading edge up positive; 0 for none [rad]. */
  public double shimAngle() {
    return shim.map(part -> part.piece().angle()).orElse(0.0);
  }

  /** Its parts from the fuselage on. */
  public Stream<StockPart<?>> parts() {
    return Stream.concat(Stream.of(fuselage, frontWing, stabilizer), shim.stream());
  }
}
