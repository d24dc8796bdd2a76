package trimwright.exchange.read;

/** How a rider holds the body on the deck. */
public enum Posture {
  /** On both feet. */
  STANDING("standing"),
  /** On the knees. */
  KNEELING("kneeling"),
  /** Lying face down. */
  PRONE("prone");

  private final String code;

  Posture(String code) {
    this.code = code;
  }

  /** The word in a case file. */
  public String code() {
    return code;
  }

  /** What the computation knows of a body in it. */
  public trimwright.kernel.hull.Posture body() {
    return trimwright.kernel.hull.Posture.valueOf(name());
  }
}
