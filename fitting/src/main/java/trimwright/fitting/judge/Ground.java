package trimwright.fitting.judge;

import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;

/**
 * A hard limit on which a setup falls out, in the order in which they are looked at. A setup that
 * breaks several is counted under the first.
 */
public enum Ground {
  /** The ride is not possible: mast too short for the depth, or the drive out of the water. */
  NO_ROOM,
  /** Somewhere in the ride's speeds the wings cannot carry the weight. */
  TOO_SLOW,
  /** Somewhere a wing is past its lift limit. */
  STALLED,
  /** Somewhere too little is left to the stall. */
  STALL_MARGIN,
  /** Somewhere the drive does not give the thrust. */
  THRUST,
  /** The feet cannot hold it everywhere, wherever they may stand. */
  FEET,
  /** Somewhere the deck is tilted too far. */
  PITCH,
  /** Somewhere the board touches the chop. */
  BOARD_CLEARANCE,
  /** Somewhere a wing tip comes too near the surface. */
  TIP_DEPTH,
  /** Somewhere the propeller comes too near the surface. */
  PROPELLER_DEPTH,
  /** Somewhere the foil by itself is unstable. */
  STATIC_MARGIN,
  /** The wished speed is too near to cavitation. */
  CAVITATION,
  /** A part carries more than its maker rates it for. */
  RATING,
  /** The drive does not get it off the water. */
  TAKE_OFF,
  /** First flights: a fall forward brings the bow down too soon. */
  BOW_CLEAR,
  /** First flights: leaning back brings the foil out too soon. */
  BREACH;

  /** The ground that a missing trim is. */
  static Ground of(NoTrimReason reason) {
    return switch (reason) {
      case TOO_SLOW -> TOO_SLOW;
      case STALLED -> STALLED;
      case THRUST_SHORT -> THRUST;
      case FEET_CANNOT_REACH -> FEET;
    };
  }

  /** The ground that a broken limit of the rideable window is. */
  static Ground of(Limit limit) {
    return switch (limit) {
      case STALL_MARGIN -> STALL_MARGIN;
      case FOOT_SHARE -> FEET;
      case STATIC_MARGIN -> STATIC_MARGIN;
      case PITCH -> PITCH;
      case BOARD_CLEARANCE -> BOARD_CLEARANCE;
    };
  }
}
