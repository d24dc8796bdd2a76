package trimwright.exchange.read;

import java.util.List;
import java.util.OptionalInt;
import trimwright.exchange.read.internal.Findings;

/**
 * One thing that is wrong with a text.
 *
 * @param key path of the key, such as {@code setup.mast.length_mm}; empty for the text as a whole
 * @param line where it stands, counted from 1
 * @param message a whole sentence that names the key, the value and what is permitted
 */
public record Problem(String key, OptionalInt line, String message) {

  /** Hands out what was found. */
  static List<Problem> all(Findings findings) {
    return findings.list().stream().map(f -> new Problem(f.key(), f.line(), f.message())).toList();
  }

  /** The message with its line in front, for lists of problems. */
  public String text() {
    return line.isPresent() ? "line " + line.getAsInt() + ": " + message : message;
  }
}
