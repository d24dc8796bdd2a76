package trimwright.reference.topic;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The inputs of one row by name; notes which of them have been read. Not for use by threads. */
public final class Conditions {
  private final Map<String, String> values;
  private final Set<String> unread;

  /**
   * Wraps the inputs.
   *
   * @param values inputs by name
   */
  public Conditions(Map<String, String> values) {
    this.values = Map.copyOf(values);
    this.unread = new HashSet<>(values.keySet());
  }

  /**
   * A condition as text.
   *
   * @throws IllegalStateException if the row does not state it
   */
  public String text(String name) {
    String value = values.get(name);
    if (value == null) {
      throw new IllegalStateException("condition " + name + " is missing");
    }
    unread.remove(name);
    return value;
  }

  /**
   * A condition as a number, in the unit its name tells.
   *
   * @throws IllegalStateException if the row does not state it
   */
  public double number(String name) {
    return Double.parseDouble(text(name));
  }

  /** Whether the row states a condition. */
  public boolean has(String name) {
    return values.containsKey(name);
  }

  /** Names of the conditions that nothing has read so far. */
  public Set<String> unread() {
    return Set.copyOf(unread);
  }
}
