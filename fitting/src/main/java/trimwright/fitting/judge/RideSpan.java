package trimwright.fitting.judge;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The speeds that a rider rides, evenly spaced.
 *
 * @param from the slowest [m/s], above 0
 * @param to the fastest [m/s], above the slowest
 * @param count how many are looked at, both ends among them; at least two
 */
public record RideSpan(double from, double to, int count) {
  /** Speeds looked at unless somebody asks for more. */
  public static final int USUAL_COUNT = 13;

  /** How far below and above the wished speed people ride unless they say otherwise. Chosen. */
  private static final double BELOW = 0.8;

  private static final double ABOVE = 1.2;

  /**
   * Checks the speeds.
   *
   * @throws IllegalArgumentException if they do not rise from above 0, or are fewer than two
   */
  public RideSpan {
    if (!(from > 0 && to > from) || count < 2) {
      throw new IllegalArgumentException(
          "a ride's speeds must rise from above 0, were " + count + " from " + from + " to " + to);
    }
  }

  /**
   * A fifth below to a fifth above a wished speed.
   *
   * @param wishedSpeed [m/s]
   */
  public static RideSpan about(double wishedSpeed) {
    return new RideSpan(BELOW * wishedSpeed, ABOVE * wishedSpeed, USUAL_COUNT);
  }

  /** The speeds, rising [m/s]. */
  public double[] speeds() {
    return IntStream.range(0, count)
        .mapToDouble(i -> from + (to - from) * i / (count - 1))
        .toArray();
  }

  /** The same as a stream. */
  public DoubleStream stream() {
    return DoubleStream.of(speeds());
  }
}
