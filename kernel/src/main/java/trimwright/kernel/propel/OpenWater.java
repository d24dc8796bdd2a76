package trimwright.kernel.propel;

/**
 * What a propeller does alone in open water: thrust coefficient KT = T / (rho n^2 D^4) and torque
 * coefficient KQ = Q / (rho n^2 D^5) over the advance ratio J = V / (n D). Immutable.
 */
public sealed interface OpenWater permits SeriesPropeller, MeasuredPropeller {
  /**
   * The thrust coefficient.
   *
   * @param advance J, 0 or more [1]
   * @param reynolds speed of the blade at three quarters of the radius times the diameter over the
   *     kinematic viscosity [1]
   * @return KT [1]
   */
  double thrustCoefficient(double advance, double reynolds);

  /**
   * The torque coefficient.
   *
   * @param advance J, 0 or more [1]
   * @param reynolds as for the thrust [1]
   * @return KQ [1]
   */
  double torqueCoefficient(double advance, double reynolds);

  /**
   * The advance ratio at which about no thrust is left.
   *
   * @return J [1]
   */
  double noThrustAdvance();

  /**
   * Whether measurements stand behind the coefficients at an advance ratio; elsewhere the curve is
   * only carried on.
   *
   * @param advance J [1]
   */
  boolean covers(double advance);
}
