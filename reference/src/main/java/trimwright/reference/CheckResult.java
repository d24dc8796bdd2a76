package trimwright.reference;

/**
 * A published value beside the computed one.
 *
 * @param id the check
 * @param source where the figure stands
 * @param provenance how the figure came here
 * @param expected published figure, in {@code unit}
 * @param computed what the computation gives, in {@code unit}; never NaN
 * @param error computed less expected, in {@code unit}
 * @param tolerance largest error that counts as met, in {@code unit}
 * @param unit {@code 1} where there is none
 * @param met whether the error is within the tolerance
 */
public record CheckResult(
    String id,
    String source,
    Provenance provenance,
    double expected,
    double computed,
    double error,
    double tolerance,
    String unit,
    boolean met) {

  /**
   * Judges a computed value.
   *
   * @param check the published figure
   * @param computed what the computation gives, in the check's unit
   * @throws IllegalStateException if the computed value is not finite
   */
  static CheckResult of(Check check, double computed) {
    if (!Double.isFinite(computed)) {
      throw new IllegalStateException(
          "check " + check.id() + " computed no finite value: " + computed);
    }
    double error = computed - check.expected();
    return new CheckResult(
        check.id(),
        check.source(),
        check.provenance(),
        check.expected(),
        computed,
        error,
        check.tolerance(),
        check.unit(),
        Math.abs(error) <= check.tolerance());
  }
}
