package trimwright.kernel.propel;

/**
 * One measured row of a propeller's open-water curve.
 *
 * @param advance J, 0 or more [1]
 * @param thrust KT [1]
 * @param torque KQ (not ten times it), above 0 [1]
 */
public record OpenWaterRow(double advance, double thrust, double torque) {
  /** Two pi: advance ratio times KT over KQ is efficiency times this. */
  private static final double TURN = 2 * Math.PI;

  /**
   * Thrust power over shaft power.
   *
   * @return efficiency [1]
   */
  public double efficiency() {
    return advance * thrust / (TURN * torque);
  }
}
