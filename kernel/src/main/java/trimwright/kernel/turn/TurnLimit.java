package trimwright.kernel.turn;

/** What ends turns of growing bank. */
public enum TurnLimit {
  /** A tip comes too near the surface and draws air. */
  TIP,
  /** The board's inner edge comes too near the crests of the chop. */
  RAIL,
  /** The weight would have to press behind the back foot or too near a foot. */
  FEET,
  /** A strip comes too near its stall. */
  STALL,
  /** The drive cannot push as hard. */
  POWER,
  /** No steady circle has this bank at this speed: the rider would have to lean less. */
  NO_CIRCLE,
  /** Nothing ends them up to the largest bank looked at. */
  NONE
}
