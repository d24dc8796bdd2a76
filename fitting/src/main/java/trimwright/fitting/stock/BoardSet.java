package trimwright.fitting.stock;

import java.util.Optional;
import java.util.stream.Stream;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Mast;

/**
 * The upper half of a setup: all down to the mast's foot. Pitch and thrust depend on its board and
 * battery through their masses alone.
 *
 * @param board the board
 * @param battery the battery, where the setup is driven
 * @param mast the mast
 * @param drive the drive, where the setup is driven
 */
public record BoardSet(
    StockPart<TrackedBoard> board,
    Optional<StockPart<StockBattery>> battery,
    StockPart<Mast> mast,
    Optional<StockPart<Drive>> drive) {
  /** Its parts from the board down. */
  public Stream<StockPart<?>> parts() {
    return Stream.of(Stream.of(board), battery.stream(), Stream.of(mast), drive.stream())
        .flatMap(part -> part);
  }
}
