package trimwright.kernel.section;

/**
 * Drag over lift of a {@link CorrelatedSection} at one Reynolds number: a parabola about the ideal
 * lift, and what the approach to the lift limit adds.
 *
 * @param least drag at the ideal lift [1]
 * @param rise with the square of the distance to it [1]
 * @param idealLift lift coefficient of least drag [1]
 * @param maximumLift lift limit upwards [1]
 * @param minimumLift lift limit downwards [1]
 */
record CorrelatedPolar(
    double least, double rise, double idealLift, double maximumLift, double minimumLift)
    implements Polar {
  /**
   * Drag that the approach to the lift limit adds at the limit itself [1]; from memory of the
   * 0012's polars.
   */
  private static final double DRAG_AT_LIMIT = 0.010;

  /** Share of the lift limit from which that drag begins [1]. */
  private static final double LIMIT_ONSET = 0.8;

  @Override
  public double drag(double liftCoefficient) {
    double away = liftCoefficient - idealLift;
    double attached = least + rise * away * away;
    double limit = liftCoefficient >= 0 ? maximumLift : minimumLift;
    double beyond = (liftCoefficient / limit - LIMIT_ONSET) / (1 - LIMIT_ONSET);
    if (!(beyond > 0)) {
      return attached;
    }
    // Starts with the cube, so that slope and curvature are continuous; 1 at the limit; ends as a
    // straight line, so that lift asked for far beyond the limit does not end in absurd drag.
    double square = beyond * beyond;
    return attached + DRAG_AT_LIMIT * 1.25 * beyond * square / (1 + 0.25 * square);
  }
}
