package trimwright.kernel.motion;

/**
 * How the water itself moves. Places are metres along the travel from where the motion began, times
 * seconds since then.
 */
public interface WaterMotion {
  /** Still water. */
  WaterMotion STILL =
      new WaterMotion() {
        @Override
        public double height(double place, double time) {
          return 0;
        }

        @Override
        public double upward(double place, double depth, double time) {
          return 0;
        }

        @Override
        public double forward(double place, double depth, double time) {
          return 0;
        }
      };

  /**
   * Height of the surface above still water.
   *
   * @param place along the travel [m]
   * @param time [s]
   * @return height [m]
   */
  double height(double place, double time);

  /**
   * Upward speed of the water.
   *
   * @param place along the travel [m]
   * @param depth below still water [m]
   * @param time [s]
   * @return speed [m/s]
   */
  double upward(double place, double depth, double time);

  /**
   * Speed of the water along the travel.
   *
   * @param place along the travel [m]
   * @param depth below still water [m]
   * @param time [s]
   * @return speed [m/s]
   */
  double forward(double place, double depth, double time);
}
