package trimwright.kernel.section;

import java.util.Arrays;

/**
 * A closed outline: from the trailing edge over the upper surface to the leading edge and back
 * below, chord 1, leading edge at the origin, x aft, y up.
 *
 * <p>Both surfaces hold the same number of points, and the k-th point from the leading edge of one
 * faces the k-th of the other: the point half way between them lies on the mean line. Immutable.
 */
public final class SectionShape {
  /** How far an end point may lie from where it belongs [chords]: rounding. */
  private static final double ROUNDING = 1e-9;

  private final double[] x;
  private final double[] y;
  private final double thickness;

  /**
   * An outline from its points.
   *
   * @param x distances behind the leading edge [chords]
   * @param y heights above the chord line [chords]
   * @throws IllegalArgumentException if the arrays differ in length, hold fewer than 11 points, an
   *     even number of them or one that is not finite, do not start and end at (1, 0), or do not
   *     have (0, 0) in the middle
   */
  public SectionShape(double[] x, double[] y) {
    int n = x.length;
    if (y.length != n || n < 11 || n % 2 == 0) {
      throw new IllegalArgumentException(
          "a section outline needs as many x as y, an odd number and at least 11 points, had "
              + n
              + " and "
              + y.length);
    }
    for (int i = 0; i < n; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        throw new IllegalArgumentException(
            "point " + (i + 1) + " of a section outline must be finite, was " + x[i] + ", " + y[i]);
      }
    }
    requireAt(x, y, 0, 1);
    requireAt(x, y, n - 1, 1);
    requireAt(x, y, n / 2, 0);
    this.x = x.clone();
    this.y = y.clone();
    thickness = measuredThickness();
  }

  private static void requireAt(double[] x, double[] y, int i, double place) {
    if (Math.abs(x[i] - place) > ROUNDING || Math.abs(y[i]) > ROUNDING) {
      throw new IllegalArgumentException(
          "point "
              + (i + 1)
              + " of a section outline must be at ("
              + place
              + ", 0) chords, was at ("
              + x[i]
              + ", "
              + y[i]
              + ")");
    }
  }

  /** Distances behind the leading edge [chords]; a copy. */
  public double[] x() {
    return x.clone();
  }

  /** Heights above the chord line [chords]; a copy. */
  public double[] y() {
    return y.clone();
  }

  /** Number of points, first and last both at the trailing edge [1]. */
  public int size() {
    return x.length;
  }

  /** Largest distance between facing points of the two surfaces [chords]. */
  public double thickness() {
    return thickness;
  }

  private double measuredThickness() {
    double largest = 0;
    for (int i = 0; i < x.length / 2; i++) {
      int j = x.length - 1 - i;
      largest = Math.max(largest, Math.hypot(x[i] - x[j], y[i] - y[j]));
    }
    return largest;
  }

  /**
   * Height of the mean line above the chord line where it is furthest from it [chords]; negative if
   * that is below.
   */
  public double camber() {
    int i = furthestMeanPoint();
    return 0.5 * (y[i] + y[x.length - 1 - i]);
  }

  /**
   * Distance behind the leading edge of the place of largest camber [chords]; 0.5 without camber.
   */
  public double camberPosition() {
    int i = furthestMeanPoint();
    return i == 0 ? 0.5 : 0.5 * (x[i] + x[x.length - 1 - i]);
  }

  private int furthestMeanPoint() {
    int furthest = 0;
    double largest = ROUNDING;
    for (int i = 0; i < x.length / 2; i++) {
      double height = Math.abs(0.5 * (y[i] + y[x.length - 1 - i]));
      if (height > largest) {
        largest = height;
        furthest = i;
      }
    }
    return furthest;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SectionShape s && Arrays.equals(x, s.x) && Arrays.equals(y, s.y);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
  }
}
