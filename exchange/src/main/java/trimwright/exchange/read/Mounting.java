package trimwright.exchange.read;

/** On which side of the fuselage the stabilizer is bolted; it decides only how a shim goes in. */
public enum Mounting {
  /** On top of the fuselage. */
  ABOVE("above"),
  /** Under the fuselage. */
  BELOW("below");

  private final String code;

  Mounting(String code) {
    this.code = code;
  }

  /** The word in a case file. */
  public String code() {
    return code;
  }
}
