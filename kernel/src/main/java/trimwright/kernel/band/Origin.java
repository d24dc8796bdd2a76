package trimwright.kernel.band;

/** Where an input comes from: a part, the rider, the water, the ride, or the method itself. */
public enum Origin {
  /** The water and the air over it. */
  WATER,
  /** The rider. */
  RIDER,
  /** How the ride is ridden. */
  RIDE,
  /** The board. */
  BOARD,
  /** The battery. */
  BATTERY,
  /** The mast. */
  MAST,
  /** The motor pod with its propeller. */
  DRIVE,
  /** The fuselage. */
  FUSELAGE,
  /** The front wing. */
  FRONT_WING,
  /** The stabilizer. */
  STABILIZER,
  /** The shim under the stabilizer. */
  SHIM,
  /** The method: what its checks against published values leave open. */
  METHOD
}
