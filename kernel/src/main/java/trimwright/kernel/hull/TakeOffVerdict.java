package trimwright.kernel.hull;

/** What comes of a take-off. */
public enum TakeOffVerdict {
  /** The drive lifts the rider. */
  LIFTS,
  /** There is no drive: the board lifts when pulled as hard as the points of the run say. */
  LIFTS_WHEN_PULLED,
  /** At some speed on the way the drag is above the greatest thrust. */
  THRUST_SHORT,
  /** The feet would have to press beyond the deck's ends at some speed on the way. */
  FEET_CANNOT_REACH,
  /** At no speed looked at do the wings carry the weight with room to the stall. */
  NEVER_CARRIED,
  /** Board, foil and rider are heavier than water. */
  SINKS
}
