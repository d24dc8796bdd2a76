package trimwright.kernel.frame;

/**
 * A force in the plane of symmetry with its moment about a stated point, in water axes.
 *
 * @param forward component along the direction of travel [N]; drag is negative
 * @param up component straight up [N]; weight is negative
 * @param noseUp moment about the stated point, nose up positive [N·m]
 */
public record PlaneForce(double forward, double up, double noseUp) {

  /** No force at all. */
  public static final PlaneForce NONE = new PlaneForce(0, 0, 0);

  /**
   * A force acting at a place.
   *
   * @param forward component along the direction of travel [N]
   * @param up component straight up [N]
   * @param ahead how far the place lies ahead of the moment's reference point, level [m]
   * @param above how far the place lies above the moment's reference point [m]
   * @return the force with its moment about the reference point
   */
  public static PlaneForce at(double forward, double up, double ahead, double above) {
    // Nose up positive: an upward force ahead of the point lifts the nose, a forward force above it
    // presses it down.
    return new PlaneForce(forward, up, up * ahead - forward * above);
  }

  /**
   * The sum of this and another force about the same point.
   *
   * @param other force about the same point
   * @return both together
   */
  public PlaneForce plus(PlaneForce other) {
    return new PlaneForce(forward + other.forward, up + other.up, noseUp + other.noseUp);
  }

  /**
   * This force with every part multiplied.
   *
   * @param factor multiplier [1]
   * @return the scaled force
   */
  public PlaneForce times(double factor) {
    return new PlaneForce(forward * factor, up * factor, noseUp * factor);
  }

  /**
   * The same force with its moment about another point.
   *
   * @param ahead how far the new point lies ahead of the old one [m]
   * @param above how far the new point lies above the old one [m]
   * @return the same force, moment about the new point
   */
  public PlaneForce about(double ahead, double above) {
    return new PlaneForce(forward, up, noseUp - up * ahead + forward * above);
  }
}
