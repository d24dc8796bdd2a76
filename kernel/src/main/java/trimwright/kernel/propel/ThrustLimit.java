package trimwright.kernel.propel;

/** What keeps a drive from pushing harder. */
public enum ThrustLimit {
  /** The electric power that the drive takes at most. */
  POWER,
  /** The current that the battery gives at most, at its voltage under load. */
  BATTERY,
  /** The propeller's highest revolutions. */
  REVOLUTIONS,
  /** The greatest thrust that the maker gives. */
  MAKER
}
