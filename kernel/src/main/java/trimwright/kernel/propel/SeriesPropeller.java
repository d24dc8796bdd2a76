package trimwright.kernel.propel;

/**
 * A propeller of the Wageningen B-series, by its regression polynomials ({@link SeriesTable}). A
 * small drive's propeller is seldom one of that series; of the same blades, pitch and area it is
 * the nearest of which measurements are public.
 *
 * <p>Published range: 2 to 7 blades, area ratio 0.30 to 1.05, pitch 0.5 to 1.4 diameters, Reynolds
 * number 2 million at three quarters of the radius. Smaller blades are corrected for their friction
 * by the formulas of the 1978 ITTC performance prediction method (7.5-02-03-01.4, from memory): dKT
 * = -0.3 dCD (P/D) (c Z/D), dKQ = 0.25 dCD (c Z/D), dCD = 2 (1 + 2 t/c) (f(Re) - f(2e6)), f = 0.044
 * Re^-1/6 - 5 Re^-2/3; used from a Reynolds number of 0.2 million, where f is largest, to 20
 * million.
 */
public final class SeriesPropeller implements OpenWater {
  /** Fewest and most blades of the series. */
  public static final int FEWEST_BLADES = 2;

  /** Most blades of the series. */
  public static final int MOST_BLADES = 7;

  /** Least pitch over diameter of the series [1]. */
  public static final double LEAST_PITCH = 0.5;

  /** Largest pitch over diameter of the series [1]. */
  public static final double MOST_PITCH = 1.4;

  /** Least expanded blade area over disc area of the series [1]. */
  public static final double LEAST_AREA = 0.3;

  /** Largest expanded blade area over disc area of the series [1]. */
  public static final double MOST_AREA = 1.05;

  /** Reynolds number of the polynomials [1]. */
  private static final double REYNOLDS = 2e6;

  private static final double LEAST_REYNOLDS = 2e5;
  private static final double MOST_REYNOLDS = 2e7;

  /**
   * Chord at three quarters of the radius times blades over diameter and area ratio, of the series
   * (Oosterveld and van Oossanen 1975, from memory).
   */
  private static final double CHORD = 2.073;

  /** Thickness there over diameter: 0.0185 - 0.00125 Z (the same, from memory). */
  private static final double THICKNESS = 0.0185;

  private static final double THICKNESS_PER_BLADE = 0.00125;

  /** No propeller of the series pushes beyond this advance ratio [1]. */
  private static final double FAR_ADVANCE = 2;

  private static final double ADVANCE_STEP = 0.02;

  private final double pitchRatio;
  private final double[] thrust;
  private final double[] torque;

  /** Chord at three quarters of the radius over the diameter [1]. */
  private final double chord;

  /** Chords of all blades over the diameter [1]. */
  private final double solidity;

  /** By which a difference of friction counts on both sides of a section of finite thickness. */
  private final double form;

  private final double atSeries;
  private final double noThrust;

  /**
   * A propeller of the series.
   *
   * @param blades Z, 2 to 7
   * @param pitchRatio P/D, 0.5 to 1.4 [1]
   * @param areaRatio AE/A0, 0.30 to 1.05 [1]
   * @throws IllegalArgumentException if one of them is outside the published range
   */
  public SeriesPropeller(int blades, double pitchRatio, double areaRatio) {
    require("blades", blades, FEWEST_BLADES, MOST_BLADES);
    require("pitch over diameter", pitchRatio, LEAST_PITCH, MOST_PITCH);
    require("area ratio", areaRatio, LEAST_AREA, MOST_AREA);
    this.pitchRatio = pitchRatio;
    thrust = SeriesTable.thrust(blades, pitchRatio, areaRatio);
    torque = SeriesTable.torque(blades, pitchRatio, areaRatio);
    solidity = CHORD * areaRatio;
    chord = solidity / blades;
    form = 2 * (1 + 2 * (THICKNESS - THICKNESS_PER_BLADE * blades) / chord);
    atSeries = friction(REYNOLDS);
    double advance = ADVANCE_STEP;
    // With the least friction, so that there is none at any Reynolds number.
    while (advance < FAR_ADVANCE && thrustCoefficient(advance, MOST_REYNOLDS / chord) > 0) {
      advance += ADVANCE_STEP;
    }
    noThrust = advance;
  }

  private static void require(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          what + " must be " + least + " to " + most + " in the B-series, was " + value);
    }
  }

  /**
   * The thrust coefficient at the series' own Reynolds number.
   *
   * @param advance J [1]
   * @return KT [1]
   */
  public double seriesThrust(double advance) {
    return cubic(thrust, advance);
  }

  /**
   * The torque coefficient at the series' own Reynolds number.
   *
   * @param advance J [1]
   * @return KQ [1]
   */
  public double seriesTorque(double advance) {
    return cubic(torque, advance);
  }

  @Override
  public double thrustCoefficient(double advance, double reynolds) {
    return cubic(thrust, advance) - 0.3 * pitchRatio * solidity * moreDrag(reynolds);
  }

  @Override
  public double torqueCoefficient(double advance, double reynolds) {
    return cubic(torque, advance) + 0.25 * solidity * moreDrag(reynolds);
  }

  @Override
  public double noThrustAdvance() {
    return noThrust;
  }

  @Override
  public boolean covers(double advance) {
    return advance >= 0 && advance <= noThrust;
  }

  /** Drag of a blade's section beyond that of the series' own Reynolds number [1]. */
  private double moreDrag(double reynolds) {
    double own = Math.max(LEAST_REYNOLDS, Math.min(MOST_REYNOLDS, chord * reynolds));
    return form * (friction(own) - atSeries);
  }

  private static double friction(double reynolds) {
    double cubeRoot = Math.cbrt(reynolds);
    return 0.044 / Math.sqrt(cubeRoot) - 5 / (cubeRoot * cubeRoot);
  }

  private static double cubic(double[] c, double x) {
    return c[0] + x * (c[1] + x * (c[2] + x * c[3]));
  }
}
