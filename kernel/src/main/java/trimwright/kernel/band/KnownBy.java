package trimwright.kernel.band;

/** How a part's geometry is known, from the least sure to the surest. */
public enum KnownBy {
  /** From a spec sheet. */
  SHEET,
  /** Measured with a tape. */
  TAPE,
  /** Measured with a calliper. */
  CALLIPER,
  /** From a three-dimensional scan. */
  SCAN
}
