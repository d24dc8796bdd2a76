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

  /** Lowest pitch it was made for [rad]. */
  double from();

  /** Highest pitch it was made for [rad]. */
  double to();
}
