package trimwright.exchange.read;

import trimwright.kernel.limit.RideLimits;

/**
 * A limits file that was accepted.
 *
 * @param name whose limits they are; "chosen limits" for those of everybody
 * @param digest SHA-256 of the figures in lower-case hexadecimal: the same for every way of writing
 *     them
 * @param limits a figure for every limit
 */
public record LimitsFile(String name, String digest, RideLimits limits) {
  /** The limits chosen for everybody. */
  public static final LimitsFile CHOSEN = of("chosen limits", RideLimits.CHOSEN);

  /** Limits with their digest. */
  static LimitsFile of(String name, RideLimits limits) {
    StringBuilder text = new StringBuilder("limits");
    for (LimitKey key : LimitKey.values()) {
      text.append(' ').append(key.key()).append(' ').append(limits.of(key.limit()));
    }
    return new LimitsFile(name, Digest.of(text.toString()), limits);
  }
}
