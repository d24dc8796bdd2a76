package trimwright.kernel.trim;

/** Why a case has no trim point at a speed. */
public enum NoTrimReason {
  /** Even at their lift limit the wings cannot carry the weight. */
  TOO_SLOW,
  /**
   * The weight could be carried only with a part of a wing past its lift limit, or held down only
   * by wings that press ({@link TrimOutcome.NoTrim#excess}).
   */
  STALLED,
  /** The drive does not give the thrust within its limits. */
  THRUST_SHORT,
  /** The foot-pressure centre would have to lie outside the feet. */
  FEET_CANNOT_REACH
}
