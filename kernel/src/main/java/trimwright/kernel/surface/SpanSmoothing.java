package trimwright.kernel.surface;

/**
 * Evens out along one wing what its stalled sections lose, over half the local chord.
 *
 * <p>Strips that each obey a section whose lift falls with angle have no single answer: neighbours
 * drift apart, one stalled and one not, in a saw-tooth as fine as the strips. What separates does
 * so over a width of about the chord (stall cells are one to two chords wide: D. Weihs, J. Katz,
 * AIAA Journal 21, 1983). So what the strips' lift has fallen below their largest, u, counts as d
 * with d - (l² d')' = u along the span, l half the chord, level at root and tip: what is constant
 * along the span stays as it is, and so does the sum over the strips' widths. A kin of the
 * artificial viscosity of J.-J. Chattot, AIAA 2004-0220. Both from memory; the length is chosen.
 * With it one answer is left as long as a section's lift does not fall steeper than 1.2 times its
 * slope before the stall (waves of any length along a lifting line). Up to the largest lift nothing
 * is evened out.
 */
final class SpanSmoothing {
  /** Length over chord [1]. Chosen; the steepness above goes with it. */
  private static final double LENGTH = 0.5;

  private SpanSmoothing() {}

  /**
   * What each strip's loss gives on all strips.
   *
   * @return what the first strip's gives, then what the second's gives, and so on
   */
  static double[] matrix(Strips s) {
    int n = s.count;
    double[] inner = new double[n];
    double[] outer = new double[n];
    ties(s, inner, outer);
    double[] matrix = new double[n * n];
    double[] diagonal = new double[n];
    double[] column = new double[n];
    for (int j = 0; j < n; j++) {
      java.util.Arrays.fill(column, 0);
      column[j] = 1;
      // Three bands, by elimination from the root outwards.
      for (int k = 0; k < n; k++) {
        diagonal[k] = 1 + inner[k] + outer[k];
        if (k > 0) {
          double f = inner[k] / diagonal[k - 1];
          diagonal[k] -= f * outer[k - 1];
          column[k] += f * column[k - 1];
        }
      }
      for (int k = n - 1; k >= 0; k--) {
        double next = k == n - 1 ? 0 : outer[k] * matrix[j * n + k + 1];
        matrix[j * n + k] = (column[k] + next) / diagonal[k];
      }
    }
    return matrix;
  }

  /** How strongly each strip is tied to its neighbours. */
  private static void ties(Strips s, double[] inner, double[] outer) {
    for (int k = 0; k + 1 < s.count; k++) {
      double length = LENGTH * 0.5 * (s.chord[k] + s.chord[k + 1]);
      double pull = length * length / (s.centreY[k + 1] - s.centreY[k]);
      outer[k] = pull / s.width[k];
      inner[k + 1] = pull / s.width[k + 1];
    }
  }
}
