package trimwright.kernel.section;

import java.util.Arrays;

/**
 * A closed outline: from the trailing edge over the upper surface to the leading edge and back
 * below, chord 1, leading edge at the origin, x aft, y up.
 *
 * <p>Placeholder of the first skeleton: constructors check and copy.
 */
public final class SectionShape {
  private final double[] x;
  private final double[] y;

  /**
   * An outline from its points.
   *
   * @param x distances behind the leading edge [chords]
   * @param y heights above the chord line [chords]
   * @throws IllegalArgumentException if the arrays differ in length or hold fewer than 5 points
   */
  public SectionShape(double[] x, double[] y) {
    if (x.length != y.length || x.length < 5) {
      throw new IllegalArgumentException(
          "a section outline needs as many x as y and at least 5 points, was "
              + x.length
              + " and "
              + y.length);
    }
    this.x = x.clone();
    this.y = y.clone();
  }

  /** Distances behind the leading edge [chords]; a copy. */
  public double[] x() {
    return x.clone();
  }

  /** Heights above the chord line [chords]; a copy. */
  public double[] y() {
    return y.clone();
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
