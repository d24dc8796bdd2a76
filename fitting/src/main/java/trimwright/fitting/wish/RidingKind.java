package trimwright.fitting.wish;

/** Kinds of riding that wish for different things, by how far a rider has come. */
public enum RidingKind {
  /** The first flights: nothing may surprise. */
  FIRST_FLIGHTS,
  /** Flights joined to longer runs: easy on the legs. */
  LINKING,
  /** Turns at will: bank and an answer to the feet. */
  CARVING,
  /** Waves: a quick answer and an early take-off. */
  SURF
}
