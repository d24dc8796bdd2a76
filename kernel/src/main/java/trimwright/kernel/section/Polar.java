package trimwright.kernel.section;

/**
 * A section at one Reynolds number: what stays to be asked when the speed is fixed and the lift is
 * not. Immutable; may be shared between threads.
 */
public interface Polar {

  /**
   * Drag coefficient of attached flow [1], as {@link Section#drag}.
   *
   * @param liftCoefficient section lift coefficient [1]
   */
  double drag(double liftCoefficient);

  /** Largest lift coefficient [1], as {@link Section#maximumLift}. */
  double maximumLift();

  /** Most negative lift coefficient [1], as {@link Section#minimumLift}. */
  double minimumLift();
}
