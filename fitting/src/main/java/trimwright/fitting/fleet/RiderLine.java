package trimwright.fitting.fleet;

import java.util.Objects;

/**
 * One or several riders who are alike.
 *
 * @param name what they are called; unlike every other line of the table
 * @param persons how many they are, above 0
 */
public record RiderLine(String name, int persons) {
  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if they are nobody
   */
  public RiderLine {
    Objects.requireNonNull(name, "name");
    if (persons < 1) {
      throw new IllegalArgumentException(
          "a line must stand for 1 person or more, " + name + " stood for " + persons);
    }
  }
}
