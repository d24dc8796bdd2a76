package trimwright.kernel.surface;

/** Area, span and chords that no planform of the family can have together. */
public final class ContradictoryWing extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  private final double area;
  private final double smallestArea;
  private final double largestArea;

  ContradictoryWing(double area, double smallestArea, double largestArea) {
    super(
        "area of "
            + area
            + " m² does not go with this span and these chords, which allow "
            + smallestArea
            + " to "
            + largestArea
            + " m²");
    this.area = area;
    this.smallestArea = smallestArea;
    this.largestArea = largestArea;
  }

  /** The area that was given [m²]. */
  public double area() {
    return area;
  }

  /** Least area that span and chords allow: a straight taper [m²]. */
  public double smallestArea() {
    return smallestArea;
  }

  /** Largest area that span and chords allow: the fullest tip of the family [m²]. */
  public double largestArea() {
    return largestArea;
  }
}
