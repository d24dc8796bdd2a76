package trimwright.kernel.layer;

/**
 * What makes a laminar layer turn turbulent: the disturbances of the stream, and a place where the
 * surface forces it.
 *
 * @param turbulence root mean square of the stream's velocity fluctuations over its speed [1], 1e-4
 *     to 0.03
 */
public record Disturbance(double turbulence) {
  /** A low-turbulence wind tunnel, 0.07 %: chosen, amplification by about e^9. */
  public static final Disturbance TUNNEL = new Disturbance(0.0007);

  /** Natural waters in motion, 0.6 %: chosen between 0.5 and 1 %, not measured. */
  public static final Disturbance WATERS = new Disturbance(0.006);

  /**
   * A disturbance.
   *
   * @throws IllegalArgumentException if the turbulence is not 1e-4 to 0.03
   */
  public Disturbance {
    if (!(turbulence >= 1e-4 && turbulence <= 0.03)) {
      throw new IllegalArgumentException(
          "stream turbulence must be 0.0001 to 0.03, was " + turbulence);
    }
  }
}
