package trimwright.exchange.read.internal;

import java.util.List;
import java.util.OptionalInt;

/**
 * One thing that is wrong with a text, before it is handed out as a problem: this package knows
 * nothing of the one it serves.
 *
 * @param keys path of every key concerned, the one to look at first in front; empty for the text as
 *     a whole
 * @param line where it stands, counted from 1
 * @param message a whole sentence that names the key, the value and what is permitted
 */
public record Finding(List<String> keys, OptionalInt line, String message) {
  /** Copies the list. */
  public Finding {
    keys = List.copyOf(keys);
  }

  /**
   * A finding about one key, or about the text as a whole.
   *
   * @param key path of the key; empty for the text as a whole
   * @param line where it stands, counted from 1
   * @param message a whole sentence
   */
  public Finding(String key, OptionalInt line, String message) {
    this(key.isEmpty() ? List.of() : List.of(key), line, message);
  }

  /** The key to look at first; empty for the text as a whole. */
  public String key() {
    return keys.isEmpty() ? "" : keys.get(0);
  }
}
