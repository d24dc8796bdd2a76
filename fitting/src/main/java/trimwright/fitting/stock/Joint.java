package trimwright.fitting.stock;

import java.util.stream.Stream;

/** Where two parts are joined. Both sides name the mount standards they are made for. */
public enum Joint {
  /** The mast's base in the board's track. */
  BOARD_MAST(PartKind.BOARD, PartKind.MAST),
  /** The battery in the board's bay. */
  BOARD_BATTERY(PartKind.BOARD, PartKind.BATTERY),
  /** The drive on the mast. */
  MAST_DRIVE(PartKind.MAST, PartKind.DRIVE),
  /** The mast's foot in the fuselage. */
  MAST_FUSELAGE(PartKind.MAST, PartKind.FUSELAGE),
  /** The front wing on the fuselage. */
  FUSELAGE_FRONT_WING(PartKind.FUSELAGE, PartKind.FRONT_WING),
  /** The stabilizer on the fuselage. */
  FUSELAGE_STABILIZER(PartKind.FUSELAGE, PartKind.STABILIZER),
  /** The shim under the stabilizer. */
  STABILIZER_SHIM(PartKind.STABILIZER, PartKind.SHIM);

  private final PartKind one;
  private final PartKind other;

  Joint(PartKind one, PartKind other) {
    this.one = one;
    this.other = other;
  }

  /** The side nearer to the middle of the craft. */
  public PartKind one() {
    return one;
  }

  /** The other side. */
  public PartKind other() {
    return other;
  }

  /**
   * The joints of a kind of part.
   *
   * @param kind which kind
   * @return every joint that has it on one side
   */
  public static Stream<Joint> of(PartKind kind) {
    return Stream.of(values()).filter(joint -> joint.one == kind || joint.other == kind);
  }

  /**
   * What is on the far side of this joint.
   *
   * @param kind a kind on one side
   * @return the kind on the other
   * @throws IllegalArgumentException if the joint has no such side
   */
  public PartKind across(PartKind kind) {
    if (kind == one) {
      return other;
    }
    if (kind == other) {
      return one;
    }
    throw new IllegalArgumentException(this + " joins no " + kind);
  }
}
