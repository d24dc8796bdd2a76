package trimwright.fitting.stock;

/** The kinds of parts in a stock. */
public enum PartKind {
  /** A board. */
  BOARD,
  /** A battery. */
  BATTERY,
  /** A mast, with the wedge under its base. */
  MAST,
  /** A motor pod with its propeller. */
  DRIVE,
  /** A fuselage. */
  FUSELAGE,
  /** A front wing. */
  FRONT_WING,
  /** A stabilizer. */
  STABILIZER,
  /** A shim under the stabilizer. */
  SHIM
}
