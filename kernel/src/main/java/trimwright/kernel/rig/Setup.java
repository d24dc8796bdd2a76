package trimwright.kernel.rig;

import java.util.Optional;

/**
 * A set of parts that fit together, with its settings.
 *
 * @param board the board
 * @param battery the battery, where there is one
 * @param mast the mast
 * @param drive the drive, where there is one
 * @param fuselage the fuselage
 * @param frontWing the front wing
 * @param stabilizer the stabilizer, without its shim
 * @param shim added to the stabilizer's setting, leading edge up positive [rad]
 */
public record Setup(
    Board board,
    Optional<Battery> battery,
    Mast mast,
    Optional<Drive> drive,
    Fuselage fuselage,
    FittedWing frontWing,
    FittedWing stabilizer,
    double shim) {

  /**
   * How far ahead of the datum the drive's pod stands, in foil axes: it is measured from the mast's
   * axis at its own height, where a raked mast has swung aft.
   *
   * @return distance [m], negative behind
   * @throws java.util.NoSuchElementException if there is no drive
   */
  public double podAhead() {
    Drive d = drive.orElseThrow();
    return -d.behindMast() - d.heightAboveFuselage() * Math.tan(mast.rake());
  }
}
