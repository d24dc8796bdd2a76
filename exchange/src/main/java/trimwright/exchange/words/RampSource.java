package trimwright.exchange.words;

/** Who says how quickly the throttle goes. */
public enum RampSource {
  /** Whoever asked. */
  ASKED,
  /** The case file. */
  CASE,
  /** Nobody: the usual ramp is taken. */
  USUAL
}
