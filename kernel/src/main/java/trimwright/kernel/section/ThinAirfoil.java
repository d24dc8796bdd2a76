package trimwright.kernel.section;

/**
 * What a mean line alone does in inviscid flow: the limit of small thickness and camber.
 *
 * <p>With x = (1 - cos θ)/2 and z the height of the mean line: angle of no lift = (1/π) ∫ dz/dx (1
 * - cos θ) dθ; A_n = (2/π) ∫ dz/dx cos nθ dθ; moment about the quarter chord = π/4 (A2 - A1); ideal
 * lift coefficient (that at which the front stagnation point lies on the leading edge) = π A1.
 * Sources: Glauert, The Elements of Aerofoil and Airscrew Theory (1926), chapter VII; Abbott and
 * von Doenhoff (1959), chapter 4.
 *
 * @param zeroLiftAngle angle of attack of no lift [rad]; negative for positive camber
 * @param quarterChordMoment moment coefficient about the quarter chord, nose up positive [1]; the
 *     same at every angle
 * @param idealLift lift coefficient at which the flow meets the mean line smoothly [1]
 */
public record ThinAirfoil(double zeroLiftAngle, double quarterChordMoment, double idealLift) {
  /**
   * Midpoints of the integrals; the slope has a corner, so the error falls with the square: about
   * 1e-7 here.
   */
  private static final int STEPS = 2000;

  /**
   * The integrals of a mean line.
   *
   * @param line mean line
   * @return its thin-airfoil values
   */
  public static ThinAirfoil of(MeanLine line) {
    double a0 = 0;
    double a1 = 0;
    double a2 = 0;
    for (int i = 0; i < STEPS; i++) {
      double angle = Math.PI * (i + 0.5) / STEPS;
      double cos = Math.cos(angle);
      double slope = line.slope(0.5 * (1 - cos));
      a0 += slope;
      a1 += slope * cos;
      a2 += slope * (2 * cos * cos - 1);
    }
    // Σ f Δθ with Δθ = π / STEPS, so that (1/π) ∫ f dθ is the plain mean.
    double mean0 = a0 / STEPS;
    double mean1 = a1 / STEPS;
    double mean2 = a2 / STEPS;
    return new ThinAirfoil(mean0 - mean1, Math.PI / 2 * (mean2 - mean1), 2 * Math.PI * mean1);
  }
}
