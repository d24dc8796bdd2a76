package trimwright.cache;

/**
 * The long way to a value.
 *
 * @param <T> the value
 */
@FunctionalInterface
public interface Build<T> {

  /**
   * Computes the value.
   *
   * @param watch is told how far the work is, and says whether to stop
   * @throws java.util.concurrent.CancellationException if it was stopped; nothing is kept then
   */
  T build(BuildWatch watch);
}
