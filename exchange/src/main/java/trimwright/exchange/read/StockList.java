package trimwright.exchange.read;

import trimwright.fitting.stock.PartKind;

/** The lists of a stock file. */
enum StockList {
  BOARDS("boards", PartKind.BOARD),
  BATTERIES("batteries", PartKind.BATTERY),
  MASTS("masts", PartKind.MAST),
  DRIVES("drives", PartKind.DRIVE),
  FUSELAGES("fuselages", PartKind.FUSELAGE),
  FRONT_WINGS("front_wings", PartKind.FRONT_WING),
  STABILIZERS("stabilizers", PartKind.STABILIZER),
  SHIMS("shims", PartKind.SHIM);

  private final String key;
  private final PartKind kind;

  StockList(String key, PartKind kind) {
    this.key = key;
    this.kind = kind;
  }

  /** The list's key in the file. */
  String key() {
    return key;
  }

  /** What it lists. */
  PartKind kind() {
    return kind;
  }

  /** The list of a kind. */
  static StockList of(PartKind kind) {
    for (StockList list : values()) {
      if (list.kind == kind) {
        return list;
      }
    }
    throw new IllegalStateException("no list holds " + kind);
  }

  /** The key of a kind of part below {@code setup} and below {@code mounts}. */
  static String key(PartKind kind) {
    return Part.valueOf(kind.name()).key();
  }
}
