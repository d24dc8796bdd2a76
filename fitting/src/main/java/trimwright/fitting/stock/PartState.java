package trimwright.fitting.stock;

/** What a part is there for. */
public enum PartState {
  /** Lent for demo rides. */
  DEMO,
  /** New, for sale. */
  NEW,
  /** Not there: lent, broken or sold. It belongs to no setup. */
  OUT
}
