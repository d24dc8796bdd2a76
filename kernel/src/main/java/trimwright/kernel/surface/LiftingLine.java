package trimwright.kernel.surface;

import java.util.List;

/**
 * A wing gathered on a line across the stream, loaded elliptically: what waves, which are longer
 * than the wing, see of it.
 *
 * @param halfSpan half of the distance between the tips, above 0 [m]
 * @param ahead of the datum [m]
 * @param depth below the still surface, above 0 [m]
 */
public record LiftingLine(double halfSpan, double ahead, double depth) {
  /** Phase beyond which the transform is that of a long way out, within 1e-4 of its own size. */
  private static final double FAR_OUT = 200;

  /**
   * Share of sweep and dihedral at the middle of an elliptical loading, both growing with the
   * square of the fraction of the half span: the mean of that square.
   */
  private static final double MEAN_SQUARE = 0.25;

  /**
   * Least depth in mean chords: nearer to the surface neither its image nor linear waves hold, and
   * the wing is taken to lie there. Chosen.
   */
  private static final double LEAST_DEPTH = 0.25;

  /**
   * Checks the physical invariants.
   *
   * @throws IllegalArgumentException if the span or the depth is not above 0
   */
  public LiftingLine {
    if (!(halfSpan > 0) || !Double.isFinite(halfSpan)) {
      throw new IllegalArgumentException("half span must be above 0 m, was " + halfSpan + " m");
    }
    if (!(depth > 0) || !Double.isFinite(depth)) {
      throw new IllegalArgumentException("depth must be above 0 m, was " + depth + " m");
    }
  }

  /**
   * A wing's line under a level fuselage: its quarter chords at the middle of its loading.
   *
   * @param wing the wing where it stands
   * @param datumDepth depth of the datum [m]
   * @return its line
   */
  public static LiftingLine of(PlacedWing wing, double datumDepth) {
    List<Station> stations = wing.shape().stations();
    Station root = stations.get(0);
    Station tip = stations.get(stations.size() - 1);
    double behind = MEAN_SQUARE * (root.ahead() - tip.ahead());
    double below = MEAN_SQUARE * (root.above() - tip.above());
    double depth = datumDepth - wing.above() + below;
    return new LiftingLine(
        0.5 * wing.shape().span(),
        wing.ahead() - behind,
        Math.max(depth, LEAST_DEPTH * wing.shape().meanChord()));
  }

  /**
   * Part of the loading's transform over the span: the mean of cos(k y) over the loading [1]. 1 for
   * a loading that does not vary, and falling with the wave number.
   *
   * @param waveNumber along the span [1/m]
   */
  double transform(double waveNumber) {
    // Mean of cos(k s cos t) with the weight sin(t)^2: the middles of equal steps of t, which for a
    // periodic integrand is exact as long as the phase between two of them is below a half turn.
    double phase = waveNumber * halfSpan;
    if (phase > FAR_OUT) {
      // 2 J1(x)/x for large x (Abramowitz and Stegun 9.2.1).
      return 2 * Math.sqrt(2 / Math.PI) * Math.pow(phase, -1.5) * Math.cos(phase - 0.75 * Math.PI);
    }
    int steps = 8 + (int) (0.75 * phase);
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < steps; i++) {
      double t = 0.5 * Math.PI * (i + 0.5) / steps;
      double sin = Math.sin(t);
      sum += sin * sin * Math.cos(phase * Math.cos(t));
      weights += sin * sin;
    }
    return sum / weights;
  }
}
