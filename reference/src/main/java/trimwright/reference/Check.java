package trimwright.reference;

import java.util.Map;

/**
 * One published value, with all that is needed to compute it again.
 *
 * @param id unique over all tables
 * @param topic table it stands in
 * @param quantity what the figure is, in words
 * @param computation name of the evaluation that computes it
 * @param conditions inputs of that evaluation, by name
 * @param expected the published figure, in {@code unit}
 * @param unit unit of expected, computed and tolerance; {@code 1} where there is none
 * @param tolerance largest error that counts as met, in {@code unit}
 * @param toleranceReason why it is this large
 * @param source the source in words, with table or page where known
 * @param provenance how the figure came here
 * @param notes anything else to know; may be empty
 */
public record Check(
    String id,
    String topic,
    String quantity,
    String computation,
    Map<String, String> conditions,
    double expected,
    String unit,
    double tolerance,
    String toleranceReason,
    String source,
    Provenance provenance,
    String notes) {

  /**
   * Checks the row.
   *
   * @throws IllegalArgumentException if a text is missing, a figure is not finite, or the tolerance
   *     is not above 0
   */
  public Check {
    conditions = Map.copyOf(conditions);
    if (id.isBlank() || quantity.isBlank() || computation.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException(
          "check '" + id + "' lacks id, quantity, evaluation or source");
    }
    if (toleranceReason.isBlank()) {
      throw new IllegalArgumentException("check " + id + " gives no reason for its tolerance");
    }
    if (!Double.isFinite(expected) || !(tolerance > 0) || !Double.isFinite(tolerance)) {
      throw new IllegalArgumentException(
          "check "
              + id
              + ": expected must be finite and tolerance above 0, were "
              + expected
              + " and "
              + tolerance);
    }
  }
}
