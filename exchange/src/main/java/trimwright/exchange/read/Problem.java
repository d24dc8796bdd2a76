package trimwright.exchange.read;

import java.util.List;
import java.util.OptionalInt;
import trimwright.exchange.read.internal.Findings;

/**
 * One thing that is wrong with a text.
 *
 * @param key path of the key to look at first, such as {@code setup.mast.length_mm}; empty for the
 *     text as a whole
 * @param line where it stands, counted from 1
 * @param message a whole sentence that names the key, the value and what is permitted
 * @param keys every key concerned where several contradict each other, {@code key} in front; empty
 *     for the text as a whole
 */
public record Problem(String key, OptionalInt line, String message, List<String> keys) {
  /** Copies the list. */
  public Problem {
    keys = List.copyOf(keys);
  }

  /**
   * A problem of one key, or of the text as a whole.
   *
   * @param key path of the key; empty for the text as a whole
   * @param line where it stands, counted from 1
   * @param message a whole sentence
   */
  public Problem(String key, OptionalInt line, String message) {
    this(key, line, message, key.isEmpty() ? List.of() : List.of(key));
  }

  /** Hands out what was found. */
  static List<Problem> all(Findings findings) {
    return findings.list().stream()
        .map(f -> new Problem(f.key(), f.line(), f.message(), f.keys()))
        .toList();
  }

  /** The message with its line in front, for lists of problems. */
  public String text() {
    return line.isPresent() ? "line " + line.getAsInt() + ": " + message : message;
  }
}
