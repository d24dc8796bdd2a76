package trimwright.kernel.motion;

/** How a motion that was followed over time ended. */
public enum MotionEnd {
  /** The time that was to be looked at ran out. */
  RAN_OUT,
  /** The board's bow came down to the water. */
  BOW_TOUCHES,
  /** The board's stern came down to the water. */
  STERN_TOUCHES,
  /** A wing came out of the water, its highest quarter chord first. */
  WING_BREACHES,
  /** A blade of the propeller came out of the water. */
  PROPELLER_BREACHES,
  /**
   * The body's mass centre left the feet behind, or the feet would have to press beside the deck,
   * or nothing pressed on it any more.
   */
  RIDER_FALLS,
  /** Slower, steeper or deeper than the forces are known. */
  LIMIT_OF_MODEL
}
