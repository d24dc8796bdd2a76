package trimwright.desk;

/** A range of speeds or angles that cannot be computed, said in the unit in which it was given. */
public final class RangeProblem extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  private final Bound bound;

  /** The part of a range that is wrong. */
  public enum Bound {
    /** The lower end. */
    FROM,
    /** The upper end. */
    TO,
    /** The distance between neighbours, or the number of values that comes from it. */
    STEP
  }

  RangeProblem(Bound bound, String message) {
    super(message);
    this.bound = bound;
  }

  /** The part that is wrong, so that a face can name its own field. */
  public Bound bound() {
    return bound;
  }
}
