package trimwright.kernel.frame;

/**
 * An angle about y, nose up positive, with its cosine and sine worked out once: a balance asks for
 * them some forty times.
 *
 * @param angle [rad]
 * @param cos its cosine [1]
 * @param sin its sine [1]
 */
public record Attitude(double angle, double cos, double sin) {

  /**
   * An attitude.
   *
   * @param angle [rad]
   * @return the same with cosine and sine
   */
  public static Attitude of(double angle) {
    return new Attitude(angle, Math.cos(angle), Math.sin(angle));
  }

  /**
   * Cosine of this and another angle together.
   *
   * @param other angle
   * @return cosine of the sum [1]
   */
  public double cosWith(Attitude other) {
    return cos * other.cos - sin * other.sin;
  }

  /**
   * Sine of this and another angle together.
   *
   * @param other angle
   * @return sine of the sum [1]
   */
  public double sinWith(Attitude other) {
    return sin * other.cos + cos * other.sin;
  }
}
