package trimwright.kernel.surface;

/**
 * Where the strips of one wing stall at one speed.
 *
 * @param zeroLiftAngle of each strip from root to tip [rad]
 * @param highest angle at which each strip's section has its largest lift [rad]
 * @param lowest angle of its most negative lift [rad]
 */
public record StallAngles(double[] zeroLiftAngle, double[] highest, double[] lowest) {

  /**
   * How far each strip still is from its stall, as the smallest share over the strips: 1 at no
   * lift, 0 where the first strip stalls, negative past it.
   *
   * @param stripAngle effective angle of attack of each strip [rad]
   * @return smallest remaining share [1]
   */
  public double reserve(double[] stripAngle) {
    double least = 1;
    for (int k = 0; k < highest.length; k++) {
      double from = stripAngle[k] - zeroLiftAngle[k];
      double limit = (from >= 0 ? highest[k] : lowest[k]) - zeroLiftAngle[k];
      least = Math.min(least, 1 - from / limit);
    }
    return least;
  }

  /**
   * Angle that the strip nearest to its stall nose up has left.
   *
   * @param stripAngle effective angle of attack of each strip [rad]
   * @return least distance [rad]; negative past it
   */
  public double room(double[] stripAngle) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < highest.length; k++) {
      least = Math.min(least, highest[k] - stripAngle[k]);
    }
    return least;
  }

  /**
   * Angle that the strip nearest to its stall nose down has left.
   *
   * @param stripAngle effective angle of attack of each strip [rad]
   * @return least distance [rad]; negative past it
   */
  public double roomBelow(double[] stripAngle) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < lowest.length; k++) {
      least = Math.min(least, stripAngle[k] - lowest[k]);
    }
    return least;
  }

  /**
   * Nose-up change of pitch after which the first strip stalls, by the strips' own slopes.
   *
   * @param stripAngle effective angles of attack at a pitch [rad]
   * @param slope change of each with pitch [1]
   * @return change of pitch to the first stall while turning nose up [rad]; negative past it
   */
  public double margin(double[] stripAngle, double[] slope) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < highest.length; k++) {
      if (slope[k] > 0) {
        least = Math.min(least, (highest[k] - stripAngle[k]) / slope[k]);
      }
    }
    return least;
  }

  /** Number of strips past either angle. */
  public int stalled(double[] stripAngle) {
    int stalled = 0;
    for (int k = 0; k < highest.length; k++) {
      if (stripAngle[k] > highest[k] || stripAngle[k] < lowest[k]) {
        stalled++;
      }
    }
    return stalled;
  }
}
