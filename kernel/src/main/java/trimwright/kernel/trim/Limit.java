package trimwright.kernel.trim;

/** A limit of the rideable window that a trim point breaks. */
public enum Limit {
  /** Less than the chosen number of degrees to the first stalled strip. */
  STALL_MARGIN,
  /** The foot-pressure centre lies too near a foot. */
  FOOT_SHARE,
  /**
   * The foil by itself is unstable in pitch: the static margin less the deck lever's share is
   * negative. A lever that makes a stable foil an unstable ride does not count here, since riders
   * balance it.
   */
  STATIC_MARGIN,
  /** The deck is tilted more than the chosen angle. */
  PITCH,
  /** The board's bow or stern would touch the chop. */
  BOARD_CLEARANCE
}
