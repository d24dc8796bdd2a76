package trimwright.exchange.picture;

import java.util.List;

/**
 * A force in the side view.
 *
 * @param kind for the element's class
 * @param at where it acts
 * @param towards whether its head is where it acts (a weight pressing on the deck); otherwise it
 *     starts there
 * @param ahead part along the direction of travel [N]
 * @param up part straight up [N]
 * @param colour paint
 * @param dashed whether it belongs to the back of the craft
 * @param wordings its label, the fullest first
 * @param unit of the label
 * @param rather the side on which the label is looked for first
 */
record SideForce(
    String kind,
    Spot at,
    boolean towards,
    double ahead,
    double up,
    String colour,
    boolean dashed,
    List<String> wordings,
    String unit,
    Label.Side rather) {

  double size() {
    return Math.hypot(ahead, up);
  }

  /** Where the arrow starts when one newton is so long [m/N]. */
  Spot tail(double scale) {
    return towards ? at.plus(-ahead * scale, -up * scale) : at;
  }

  /** Where the arrow's point is when one newton is so long [m/N]. */
  Spot head(double scale) {
    return towards ? at : at.plus(ahead * scale, up * scale);
  }
}
