package trimwright.fitting.stock;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The places in which a board's track takes the mast, forward of the track's middle.
 *
 * @param from the hindmost place [m]
 * @param to the foremost place, whole steps ahead of the hindmost within a thousandth of one [m]
 * @param step from place to place [m]; 0 where there is one place
 */
public record Track(double from, double to, double step) {
  /** The mast in the middle, nowhere else. */
  public static final Track MIDDLE = new Track(0, 0, 0);

  /** Share of a step by which rounding may miss the last place. */
  private static final double ROUNDING = 1e-3;

  /**
   * Checks the places.
   *
   * @throws IllegalArgumentException if the foremost place is not whole steps ahead of the hindmost
   */
  public Track {
    boolean one = from == to && step == 0;
    double steps = (to - from) / step;
    if (!one && !(step > 0 && steps >= 0 && Math.abs(steps - Math.rint(steps)) <= ROUNDING)) {
      throw new IllegalArgumentException(
          "a track's places must be whole steps apart, were " + from + " to " + to + " by " + step);
    }
  }

  /** How many places there are. */
  public int count() {
    return step == 0 ? 1 : 1 + (int) Math.rint((to - from) / step);
  }

  /** The places from the hindmost on [m]. */
  public DoubleStream places() {
    int last = count() - 1;
    return IntStream.rangeClosed(0, last)
        .mapToDouble(i -> last == 0 ? from : from + (to - from) * i / last);
  }
}
