package trimwright.exchange.read;

/** The parts of a setup, as the case file names them. */
public enum Part {
  /** The board. */
  BOARD("board"),
  /** The battery. */
  BATTERY("battery"),
  /** The mast. */
  MAST("mast"),
  /** The motor pod with its propeller. */
  DRIVE("drive"),
  /** The fuselage. */
  FUSELAGE("fuselage"),
  /** The front wing. */
  FRONT_WING("front_wing"),
  /** The stabilizer. */
  STABILIZER("stabilizer"),
  /** The shim under the stabilizer. */
  SHIM("shim");

  private final String key;

  Part(String key) {
    this.key = key;
  }

  /** The key below {@code setup} in a case file. */
  public String key() {
    return key;
  }
}
