package trimwright.kernel.surface;

/** How lattice and sections are brought together at each speed and pitch. */
@FunctionalInterface
public interface Couplings {

  /**
   * The coupling at a speed.
   *
   * @param speed [m/s], above 0
   * @return sections at that speed, and what else flows at the wings
   */
  AtSpeed at(double speed);

  /** The coupling at one speed. */
  @FunctionalInterface
  interface AtSpeed {
    /**
     * The coupling at a pitch.
     *
     * @param pitch of the fuselage [rad]
     * @return it
     */
    StripCoupling at(double pitch);
  }
}
