package trimwright.kernel.motion;

/** Something that goes evenly from nothing to all. */
public final class Ramp {
  private Ramp() {}

  /**
   * How much of it has come.
   *
   * @param time [s]
   * @param begin when it begins [s]
   * @param length how long it takes [s]; 0 for at once
   * @return from 0 to 1 [1]
   */
  public static double share(double time, double begin, double length) {
    if (time < begin) {
      return 0;
    }
    return length > 0 ? Math.min(1, (time - begin) / length) : 1;
  }
}
