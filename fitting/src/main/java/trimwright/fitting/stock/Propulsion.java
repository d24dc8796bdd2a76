package trimwright.fitting.stock;

/** How the setups that are looked for are moved. */
public enum Propulsion {
  /** Each with a battery and a drive. */
  DRIVEN,
  /** None with a battery or a drive: under a wing, kite or tow line. */
  TOWED
}
