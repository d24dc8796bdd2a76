package trimwright.kernel.surface;

/** The inviscid flow of a set of wings at a pitch of the fuselage. */
public interface SurfaceResponse {

  /**
   * One wing's flow.
   *
   * @param wing which, counted from the front
   * @param pitch fuselage against the stream, nose up positive [rad]
   * @return its flow per unit of dynamic pressure
   */
  SurfaceFlow at(int wing, double pitch);

  /**
   * How the loads answer to turns of the flow at the strips.
   *
   * @param pitch fuselage against the stream, nose up positive [rad]
   * @return the answers per unit of dynamic pressure
   */
  LoadShifts shifts(double pitch);

  /** Lowest pitch it was made for [rad]. */
  double from();

  /** Highest pitch it was made for [rad]. */
  double to();

  /**
   * The loads of these wings with given sections: tabulated over pitch and speed, or solved anew at
   * every pitch asked for.
   *
   * @param sections what the sections and all else that flows follow from; equal ones have equal
   *     couplings
   * @param couplings lattice and sections together
   * @return loads at every speed
   */
  Loads loads(Object sections, Couplings couplings);
}
