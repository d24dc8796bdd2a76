package trimwright.cache;

import java.util.Objects;

/**
 * A value and where it came from.
 *
 * @param value the value
 * @param origin where it came from
 * @param reason why it was not kept, or what was wrong with the entry before, in words for people;
 *     empty where all went well
 * @param <T> the value's type
 */
public record Obtained<T>(T value, Origin origin, String reason) {

  /** Where a value came from. */
  public enum Origin {
    /** It came with the program. */
    SHIPPED,
    /** From the folder. */
    KEPT,
    /** Built, and now in the folder. */
    BUILT,
    /** Built because the entry in the folder was damaged; a good one lies there now. */
    REBUILT,
    /** Built, and not in the folder: it could not be written. */
    NOT_KEPT
  }

  /** Checks that nothing is missing. */
  public Obtained {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(origin, "origin");
    Objects.requireNonNull(reason, "reason");
  }
}
