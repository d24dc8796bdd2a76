package trimwright.kernel.rig;

/**
 * What the parts of the model that stand beside sections and lattice are multiplied by: for asking
 * how much an error of each matters.
 *
 * @param mast friction and form drag of the mast [1]
 * @param spray spray where the mast pierces the surface [1]
 * @param corners drag where mast, wings, fuselage and pod meet [1]
 * @param bodies drag of fuselage and pod [1]
 * @param waves what the waves do at the wings besides the surface's image [1]
 * @param wake what the front wing's wake has lost at the stabilizer [1]
 */
public record ModelFactors(
    double mast, double spray, double corners, double bodies, double waves, double wake) {
  /** The model as it is. */
  public static final ModelFactors NONE = new ModelFactors(1, 1, 1, 1, 1, 1);

  /**
   * The same with the mast's drag changed.
   *
   * @param factor by which it is multiplied [1]
   */
  public ModelFactors withMast(double factor) {
    return new ModelFactors(factor, spray, corners, bodies, waves, wake);
  }

  /**
   * The same with the spray changed.
   *
   * @param factor by which it is multiplied [1]
   */
  public ModelFactors withSpray(double factor) {
    return new ModelFactors(mast, factor, corners, bodies, waves, wake);
  }

  /**
   * The same with the corners' drag changed.
   *
   * @param factor by which it is multiplied [1]
   */
  public ModelFactors withCorners(double factor) {
    return new ModelFactors(mast, spray, factor, bodies, waves, wake);
  }

  /**
   * The same with the drag of fuselage and pod changed.
   *
   * @param factor by which it is multiplied [1]
   */
  public ModelFactors withBodies(double factor) {
    return new ModelFactors(mast, spray, corners, factor, waves, wake);
  }

  /**
   * The same with the waves changed.
   *
   * @param factor by which what they do is multiplied [1]
   */
  public ModelFactors withWaves(double factor) {
    return new ModelFactors(mast, spray, corners, bodies, factor, wake);
  }

  /**
   * The same with the wake changed.
   *
   * @param factor by which its loss is multiplied [1]
   */
  public ModelFactors withWake(double factor) {
    return new ModelFactors(mast, spray, corners, bodies, waves, factor);
  }
}
