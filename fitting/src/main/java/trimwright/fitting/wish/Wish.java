package trimwright.fitting.wish;

/** One thing wished of a ride: a number in SI, named with its unit. */
public enum Wish {
  /** How far the deck is from the wished pitch at the wished speed, either way [rad]. */
  LEVEL,
  /** Foot share's distance from the wished one, mean over the ride's speeds [1]. */
  FEET,
  /** Change of foot share over the ride's speeds, either way, per change of speed [s/m]. */
  GROWTH,
  /** Slowest speed that flies [m/s]. */
  TAKE_OFF,
  /** Least stall margin over the ride's speeds [rad]. */
  STALL,
  /**
   * Largest pitch rate within half a second of one centimetre of foot pressure, at the wished speed
   * [rad/s].
   */
  MANNERS,
  /** Bank at which the upper wing tip comes as near to the surface as it may [rad]. */
  TURN,
  /**
   * How far the battery carries at the wished speed on what may be used of it [m]; none without
   * one.
   */
  RANGE,
  /** Mass of board, battery and foil [kg]. */
  GEAR_MASS,
  /** How far both feet stand from where the rider likes to stand, either way [m]. */
  FEET_MOVED
}
