package trimwright.kernel.surface;

/**
 * One wing alone at one angle.
 *
 * @param angleOfAttack root chord against the stream [rad]
 * @param lift on area [1]
 * @param drag induced and viscous, on area [1]
 * @param moment about the root quarter chord, on area and mean chord, nose up positive [1]
 * @param inducedDrag from the bound vortices [1]
 * @param inducedDragFarField from the wake far behind [1]
 * @param minimumPressure lowest pressure coefficient on any strip [1]
 * @param stalled whether a strip is past its section's largest or most negative lift
 * @param residual see {@link CoupledFlow#residual} [1]
 */
public record WingCoefficients(
    double angleOfAttack,
    double lift,
    double drag,
    double moment,
    double inducedDrag,
    double inducedDragFarField,
    double minimumPressure,
    boolean stalled,
    double residual) {
  /** Whether lattice and sections agree. */
  public boolean converged() {
    return residual <= CoupledFlow.TOLERANCE;
  }
}
