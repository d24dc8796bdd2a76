package trimwright.exchange.picture;

/**
 * A label with its box.
 *
 * @param label what it says
 * @param text the wording that fitted
 * @param box where it stands
 */
record PlacedLabel(Label label, String text, Box box) {}
