package trimwright.reference.topic;

/** Asks the computation for one quantity. */
@FunctionalInterface
public interface Computation {
  /**
   * Computes the quantity.
   *
   * @param conditions the row's inputs
   * @return the value, in the unit the row states
   */
  double compute(Conditions conditions);
}
