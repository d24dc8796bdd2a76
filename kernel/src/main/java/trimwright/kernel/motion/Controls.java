package trimwright.kernel.motion;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

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

  /**
   * Controls without a gust.
   *
   * @param footPressure over time [m]
   * @param thrust over time and speed [N]
   * @return them
   */
  static Controls of(DoubleUnaryOperator footPressure, DoubleBinaryOperator thrust) {
    return of(footPressure, thrust, time -> 0);
  }

  /**
   * Controls.
   *
   * @param footPressure over time [m]
   * @param thrust over time and speed [N]
   * @param gust over time [m/s]
   * @return them
   */
  static Controls of(
      DoubleUnaryOperator footPressure, DoubleBinaryOperator thrust, DoubleUnaryOperator gust) {
    return new Controls() {
      @Override
      public double footPressure(double time) {
        return footPressure.applyAsDouble(time);
      }

      @Override
      public double thrust(double time, double speed) {
        return thrust.applyAsDouble(time, speed);
      }

      @Override
      public double gust(double time) {
        return gust.applyAsDouble(time);
      }
    };
  }
}
