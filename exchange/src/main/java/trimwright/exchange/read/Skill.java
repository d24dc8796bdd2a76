package trimwright.exchange.read;

/** How far a rider has come. */
public enum Skill {
  /** The first flights. */
  FIRST_FLIGHTS("first-flights"),
  /** Flights joined to longer runs. */
  LINKING("linking"),
  /** Turns at will. */
  CARVING("carving"),
  /** Rides waves. */
  SURF("surf");

  private final String code;

  Skill(String code) {
    this.code = code;
  }

  /** The word in a case file. */
  public String code() {
    return code;
  }
}
