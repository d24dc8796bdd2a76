package trimwright.kernel.motion;

/** What rider and wind do over time. */
public interface Controls {
  /**
   * Where the feet press (a body that follows the board: where its mass rests), along the deck
   * ahead of the mast's axis.
   *
   * @param time [s]
   * @return distance [m]
   */
  double footPressure(double time);

  /**
   * Thrust of the drive along its line, or pull.
   *
   * @param time [s]
   * @param speed through the water [m/s]
   * @return thrust [N]
   */
  double thrust(double time, double speed);

  /**
   * Head wind more than the case's.
   *
   * @param time [s]
   * @return [m/s]
   */
  default double gust(double time) {
    return 0;
  }
}
