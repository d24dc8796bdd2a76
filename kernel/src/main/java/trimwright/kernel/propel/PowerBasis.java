package trimwright.kernel.propel;

/**
 * What electric power is computed from, and how far it may be off until a ride has measured it. The
 * deviations are chosen, no source, with their reasons.
 */
public enum PowerBasis {
  /**
   * A share of the ideal disc's efficiency: propeller 0.75, motor and controller 0.8, each within a
   * tenth.
   */
  ESTIMATED(0.10),
  /** An overall efficiency that was given. */
  GIVEN_EFFICIENCY(0.04),
  /**
   * Blades, pitch and area as a propeller of a published series: real blades differ by some 5 %,
   * the motor by as much.
   */
  SERIES(0.07),
  /** A measured open-water table: what is left is the motor, and flow round pod and mast. */
  OPEN_WATER(0.05);

  private final double deviation;

  PowerBasis(double deviation) {
    this.deviation = deviation;
  }

  /**
   * One standard deviation of the efficiency, as a share of it [1].
   *
   * @return share
   */
  public double deviation() {
    return deviation;
  }
}
