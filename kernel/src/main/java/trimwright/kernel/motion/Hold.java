package trimwright.kernel.motion;

/** What it takes to hold a trim. */
public enum Hold {
  /** Nothing grows by itself: whoever keeps upright stays in trim. */
  STEADY,
  /** Something grows, slowly enough for a rider who answers a quarter of a second late. */
  RIDEABLE,
  /** Something grows faster than anybody answers. */
  NOBODY
}
