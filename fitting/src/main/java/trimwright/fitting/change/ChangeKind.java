package trimwright.fitting.change;

/**
 * What can be changed, the least effort first. The order is chosen: on the water, on the beach with
 * a spanner, with a part to make, with a part from the wall, with a part that everything hangs on.
 */
public enum ChangeKind {
  /** Ride faster or slower. The amount is faster positive [m/s]. */
  SPEED,
  /** Both feet along the deck. The amount is forward positive [m]. */
  STANCE,
  /** The mast in its track. The amount is forward positive [m]. */
  TRACK,
  /** The shim under the stabilizer. The amount is its leading edge up positive [rad]. */
  SHIM,
  /** The wedge under the mast's base. The amount is the deck's nose up positive [rad]. */
  WEDGE,
  /** Another stabilizer. */
  STABILIZER,
  /** Another front wing. */
  FRONT_WING,
  /** Another mast, with the wedge that belongs to it. */
  MAST,
  /** Another board. */
  BOARD;

  /** Whether it takes a part of the stock, not an amount. */
  public boolean isPart() {
    return compareTo(STABILIZER) >= 0;
  }
}
