package trimwright.kernel.section;

/**
 * Drag of attached flow about a section: the friction of a flat plate of the same length, the form
 * factor of its thickness, and a part that grows with the square of lift away from the ideal lift.
 *
 * <p>Least drag is 2 Cf (1 + 2 t/c + 60 (t/c)⁴) with Prandtl's laminar-turbulent friction. Where
 * the clean section turns turbulent is fitted to two measured least drags of NACA 0012: 0.0058 at 6
 * million (Report 824, from memory) and 0.0079 at 0.36 million (SAND80-2114, from memory): x/c =
 * 0.70 - 0.31 log10(Re / 0.36 million), eased into 0.05 to 0.95. It stands for every thickness and
 * camber. The part that grows with lift is (0.0042 at 6 million, about 0.0095 at 0.36 million)
 * times the square, as the 0012's polars of the same reports run up to about three quarters of
 * their lift limit (from memory); scuffed 1.4 times that (from memory, low confidence). Stated
 * range: Reynolds numbers 1e4 to 1e7, ±15 % of the least drag; laminar separation bubbles, which
 * raise drag of some sections below 0.2 million, are not in it.
 */
final class ProfileDrag {
  /** A scuffed nose: turbulent from here on [chords]. */
  static final double SCUFFED_TRANSITION = 0.05;

  private static final double EARLIEST = 0.05;
  private static final double LATEST = 0.95;
  private static final double MEASURED_LOW = 3.6e5;
  private static final double MEASURED_HIGH = 6e6;
  private static final double RISE_AT_HIGH = 0.0042;
  private static final double RISE_AT_LOW = 0.0095;
  private static final double SCUFFED_RISE = 1.4;

  private ProfileDrag() {}

  /**
   * Where the boundary layer turns turbulent.
   *
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return distance behind the leading edge [chords]
   */
  static double transition(double reynolds, Finish finish) {
    if (finish == Finish.SCUFFED) {
      return SCUFFED_TRANSITION;
    }
    double straight = 0.70 - 0.31 * Math.log10(reynolds / MEASURED_LOW);
    // Eased into its bounds without a corner; the two fitted places stay within 0.001 of the line.
    double middle = 0.5 * (EARLIEST + LATEST);
    double half = 0.5 * (LATEST - EARLIEST);
    double z = (straight - middle) / half;
    return middle + half * ease(z);
  }

  /** Close to z between -0.7 and 0.7, and never beyond -1 and 1: z / (1 + z⁶)^(1/6). */
  private static double ease(double z) {
    double square = z * z;
    return z / Math.pow(1 + square * square * square, 1.0 / 6);
  }

  /**
   * Least drag coefficient.
   *
   * @param thickness largest thickness [chords]
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return drag coefficient on the chord [1]
   */
  static double least(double thickness, double reynolds, Finish finish) {
    double friction = SkinFriction.mixed(reynolds, reynolds * transition(reynolds, finish));
    return 2 * friction * FormFactor.section(thickness);
  }

  /**
   * Growth of drag with the square of lift away from the ideal lift: a power law through the two
   * measured places.
   *
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   * @return coefficient [1]
   */
  static double rise(double reynolds, Finish finish) {
    double power = Math.log(RISE_AT_LOW / RISE_AT_HIGH) / Math.log(MEASURED_HIGH / MEASURED_LOW);
    double clean = RISE_AT_HIGH * Math.pow(MEASURED_HIGH / reynolds, power);
    return finish == Finish.SCUFFED ? SCUFFED_RISE * clean : clean;
  }
}
