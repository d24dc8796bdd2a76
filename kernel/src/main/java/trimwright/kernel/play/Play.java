package trimwright.kernel.play;

/** Something that can happen on a ride, played from a trim. */
public enum Play {
  /** The weight goes forward by a centimetre and nobody notices. */
  FOOT_FORWARD,
  /** The weight goes to the front foot. */
  LEAN_FORWARD,
  /** The weight goes to the back foot. */
  LEAN_BACK,
  /** The throttle goes up by a tenth of the thrust. */
  THROTTLE_UP,
  /** The throttle is let go, the body does nothing. */
  THROTTLE_CUT,
  /** A gust from ahead. */
  GUST,
  /** The case's chop from ahead. */
  CHOP,
  /** The weight goes forward until the board meets the water, and back. */
  TOUCHDOWN,
  /** The weight goes to the front foot and the throttle to nothing. */
  NOSE_DROP,
  /** The weight goes to the back foot at the permitted power. */
  BREACH
}
