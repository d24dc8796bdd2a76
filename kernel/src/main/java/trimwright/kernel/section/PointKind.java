package trimwright.kernel.section;

/** How a point of a polar came about, from the surest on. */
public enum PointKind {
  /** Layers and outer flow agreed. */
  COMPUTED,
  /** They did not, between two points at which they did: interpolated. */
  BRIDGED,
  /** Beyond the last agreement: a rule for deep stall. */
  EXTENDED;

  /** The less sure of this and another. */
  PointKind or(PointKind other) {
    return ordinal() >= other.ordinal() ? this : other;
  }
}
