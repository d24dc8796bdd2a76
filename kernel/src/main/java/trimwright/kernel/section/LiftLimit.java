package trimwright.kernel.section;

import trimwright.kernel.numeric.CubicSpline;

/**
 * Largest and most negative lift coefficient of a section, from measured trends.
 *
 * <p>Built on maximum lift at Reynolds numbers of 6 to 9 million, smooth (NACA Report 824; Abbott
 * and von Doenhoff 1959, appendix IV; from memory): 0006 0.92, 0009 1.32, 0012 1.59, 2412 1.68,
 * 2415 1.63, 4412 1.67, 4415 1.64, 23012 1.79, 23015 1.72; and on NACA 0012 at 0.36 million, 0.98
 * (Sheldahl and Klimas, SAND80-2114, 1981). What is said below about thinner and thicker sections,
 * about how much less a cambered section loses with the Reynolds number, and about scuffed surfaces
 * rests on recollection of the same reports and of NACA Report 586 (Jacobs and Sherman 1937): from
 * memory, low confidence, about ±12 % below a Reynolds number of a million. A boundary-layer
 * solution is meant to replace it.
 */
final class LiftLimit {
  private static final double LN10 = Math.log(10);

  /** Symmetrical sections at 6 to 9 million: thickness [chords] against maximum lift [1]. */
  private static final CubicSpline SYMMETRICAL =
      CubicSpline.natural(
          new double[] {0.0, 0.03, 0.06, 0.09, 0.12, 0.15, 0.18, 0.21, 0.24, 0.30, 0.36},
          new double[] {0.70, 0.76, 0.92, 1.32, 1.59, 1.57, 1.50, 1.41, 1.31, 1.12, 0.95});

  /**
   * Maximum lift of NACA 0012 at log10 of the Reynolds number over that at 6 million. 5.5563 is
   * 0.36 million, measured; 6.7782 is 6 million; the rest from memory.
   */
  private static final CubicSpline FALL =
      CubicSpline.natural(
          new double[] {3.0, 4.0, 4.5, 5.0, 5.5563, 6.0, 6.4, 6.7782, 7.0, 8.0},
          new double[] {0.38, 0.42, 0.455, 0.51, 0.6164, 0.74, 0.88, 1.0, 1.035, 1.07});

  private final double symmetrical;
  private final double thickness;
  private final double camber;
  private final double place;

  /**
   * A rule for one section.
   *
   * @param thickness largest thickness [chords], 0.01 to 0.3
   * @param camber largest height of the mean line [chords]; negative below the chord line
   * @param place distance of it behind the leading edge [chords]
   */
  LiftLimit(double thickness, double camber, double place) {
    this.symmetrical = SYMMETRICAL.value(thickness);
    this.thickness = thickness;
    this.camber = camber;
    this.place = place;
  }

  /** Largest lift coefficient [1]. */
  double maximum(double reynolds, Finish finish) {
    return limit(camber, reynolds, finish);
  }

  /** Most negative lift coefficient [1]: that of the section upside down, with its sign turned. */
  double minimum(double reynolds, Finish finish) {
    return -limit(-camber, reynolds, finish);
  }

  private double limit(double signedCamber, double reynolds, Finish finish) {
    double log = Math.max(3, Math.min(8, Math.log(reynolds) / LN10));
    double large = atLargeReynolds(signedCamber);
    double helpful = Math.max(0, signedCamber);
    double fall = 1 - (1 - FALL.value(log)) * noseSensitivity() / (1 + helpful / 0.045);
    double clean = large * fall;
    if (finish == Finish.CLEAN) {
      return clean;
    }
    // Standard roughness at 6 million: 0012 about 1.0, 2412 about 1.2, 4412 about 1.35. The loss
    // fades towards low
    // Reynolds numbers, where the smooth section has little left to lose.
    double fade = 0.2 + 0.8 * smoothStep((log - 5) / (6.7782 - 5));
    double loss = 0.37 * noseSensitivity() / (1 + helpful / 0.05);
    return clean * (1 - loss * fade);
  }

  /**
   * Camber lifts the limit by about 0.09 at 12 % thickness when it sits at 40 % of the chord and by
   * 0.2 when it sits at 15 %, and hardly depends on its amount beyond 2 % (2412, 4412, 23012); thin
   * sections, which stall from the nose, gain more (64-006 to 64-206: about 0.23), thick ones a
   * little less. Against the camber the limit falls (2412 about -1.3, 4412 about -1.1).
   */
  private double atLargeReynolds(double signedCamber) {
    if (signedCamber < 0) {
      return symmetrical / (1 - signedCamber / 0.09);
    }
    double forward = Math.max(0.05, 0.09 + 0.44 * (0.4 - place));
    double thin = 1 + 25 * Math.max(0, 0.12 - thickness) - 8 * Math.max(0, thickness - 0.12);
    return symmetrical + forward * Math.max(0.4, thin) * Math.tanh(signedCamber / 0.010);
  }

  /**
   * How far the section's limit follows that of the 0012 with Reynolds number and roughness: a
   * sharp nose stalls alike.
   */
  private double noseSensitivity() {
    return 0.25 + 0.75 * smoothStep((thickness - 0.04) / (0.11 - 0.04));
  }

  private static double smoothStep(double f) {
    double g = Math.max(0, Math.min(1, f));
    return g * g * (3 - 2 * g);
  }
}
