package trimwright.kernel.section;

/**
 * The mean lines of the NACA 5-digit sections: a cubic ahead of the point m and, behind it, a
 * straight line (standard) or another cubic that turns up (reflexed, made for no moment about the
 * quarter chord).
 *
 * <p>Sources: Jacobs and Pinkerton, NACA Report 537 (1935), whose constants for a design lift
 * coefficient of 0.3 stand in {@link #standard} and {@link #reflexed}; Abbott and von Doenhoff,
 * Theory of Wing Sections (1959), chapter 6. Other design lift coefficients scale the line in
 * proportion.
 *
 * @param m where the two parts meet [chords]
 * @param k1 strength of the forward cubic [1]
 * @param ratio strength of the rear cubic over that of the forward one [1]; 0 for a standard line
 */
record CubicLine(double m, double k1, double ratio) implements MeanLine {
  private static final double TABULATED_DESIGN_LIFT = 0.3;

  /** m and k1 of the lines 210 to 250. */
  private static final double[][] STANDARD = {
    {0.0580, 361.4}, {0.1260, 51.64}, {0.2025, 15.957}, {0.2900, 6.643}, {0.3910, 3.230},
  };

  /**
   * m, k1 and k2/k1 of the lines 221 to 251; from memory, held against the definition by a test.
   */
  private static final double[][] REFLEXED = {
    {0.1300, 51.990, 0.000764},
    {0.2170, 15.793, 0.00677},
    {0.3180, 6.520, 0.0303},
    {0.4410, 3.191, 0.1355},
  };

  /**
   * A standard line.
   *
   * @param place place of largest camber in twentieths of the chord, 1 to 5
   * @param designLift design lift coefficient [1]
   */
  static CubicLine standard(int place, double designLift) {
    double[] row = STANDARD[place - 1];
    return new CubicLine(row[0], row[1] * designLift / TABULATED_DESIGN_LIFT, 0);
  }

  /**
   * A reflexed line.
   *
   * @param place place of largest camber in twentieths of the chord, 2 to 5
   * @param designLift design lift coefficient [1]
   */
  static CubicLine reflexed(int place, double designLift) {
    double[] row = REFLEXED[place - 2];
    return new CubicLine(row[0], row[1] * designLift / TABULATED_DESIGN_LIFT, row[2]);
  }

  @Override
  public double height(double x) {
    double ahead = x - m;
    double rest = 1 - m;
    double cube = (x < m ? 1 : ratio) * ahead * ahead * ahead;
    // Chosen so that the line passes through (0, 0) and (1, 0).
    return k1 / 6 * (cube + m * m * m * (1 - x) - ratio * rest * rest * rest * x);
  }

  @Override
  public double slope(double x) {
    double ahead = x - m;
    double rest = 1 - m;
    double square = (x < m ? 3 : 3 * ratio) * ahead * ahead;
    return k1 / 6 * (square - m * m * m - ratio * rest * rest * rest);
  }
}
