package trimwright.fitting.fleet;

/**
 * A value found, and how far the best possible one can lie from it at most.
 *
 * @param value what was found
 * @param bound what no choice can pass: above the value where more is better, below where less is
 */
public record Proven(double value, double bound) {
  /**
   * Marks are proven to this share of them: the tolerance to which the solver settles its linear
   * programs is its own, and a tenth of the last decimal shown lies far above it.
   */
  static final double SETTLED = 1e-7;

  /** A value that nothing passes. */
  static Proven exactly(double value) {
    return new Proven(value, value);
  }

  /** A value found, where its bound has come as near as the solver settles. */
  static Proven of(double value, double bound) {
    return Math.abs(value - bound) <= SETTLED * Math.max(1, Math.abs(value))
        ? exactly(value)
        : new Proven(value, bound);
  }

  /** How far the best possible value may still lie from the one found, 0 where it is that one. */
  public double gap() {
    return Math.abs(value - bound);
  }

  /** Whether the value found is the best possible one. */
  public boolean isBest() {
    return gap() == 0;
  }
}
