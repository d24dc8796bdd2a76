package trimwright.kernel.surface;

import trimwright.kernel.section.Finish;

/**
 * The sections of one wing strip by strip: what they do at a speed, see {@link StripPolars}, and
 * the lowest pressure at any.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class ProfileForces {
  private final Strips strips;
  private final Finish finish;
  private final double[] smoothing;

  /**
   * The sections of a wing.
   *
   * @param wing the wing where it stands
   * @param finish its surface
   */
  public ProfileForces(PlacedWing wing, Finish finish) {
    strips = new Strips(wing);
    smoothing = SpanSmoothing.matrix(strips);
    this.finish = finish;
  }

  /**
   * The sections at one speed.
   *
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return every strip's section there
   */
  public StripPolars at(double reynoldsPerMetre) {
    return new StripPolars(strips, smoothing, finish, reynoldsPerMetre);
  }

  /** Lowest pressure coefficient on any strip at these lift coefficients [1]. */
  public double minimumPressure(double[] stripLift) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < strips.count; k++) {
      double pressure = strips.section[k].minimumPressure(stripLift[k]);
      if (strips.outerSection[k] != strips.section[k]) {
        pressure = strips.mix(k, pressure, strips.outerSection[k].minimumPressure(stripLift[k]));
      }
      least = Math.min(least, pressure);
    }
    return least;
  }
}
