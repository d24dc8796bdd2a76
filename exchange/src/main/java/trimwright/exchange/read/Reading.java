package trimwright.exchange.read;

import java.util.List;
import java.util.Optional;

/**
 * What reading a text gives: the value, or everything that is wrong with the text.
 *
 * @param <T> what is read
 */
public sealed interface Reading<T> {

  /** The value, where the text was accepted. */
  Optional<T> findValue();

  /** The problems; empty where the text was accepted. */
  List<Problem> problems();

  /**
   * The text was good.
   *
   * @param value what it says
   * @param <T> what is read
   */
  record Accepted<T>(T value) implements Reading<T> {
    @Override
    public Optional<T> findValue() {
      return Optional.of(value);
    }

    @Override
    public List<Problem> problems() {
      return List.of();
    }
  }

  /**
   * The text was not good.
   *
   * @param problems at least one, in the order of their lines
   * @param <T> what would have been read
   */
  record Refused<T>(List<Problem> problems) implements Reading<T> {
    /**
     * Copies the problems.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a refusal needs at least one problem");
      }
    }

    @Override
    public Optional<T> findValue() {
      return Optional.empty();
    }
  }
}
