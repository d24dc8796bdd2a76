package trimwright.exchange.words;

import java.util.Locale;
import trimwright.fitting.judge.Ground;

/** Hard limits in words. */
public final class GroundWords {
  private GroundWords() {}

  /** The name of a ground in a document. */
  public static String code(Ground ground) {
    return ground.name().toLowerCase(Locale.ROOT);
  }

  /** What a setup fell to, such as {@code stall margin}. */
  public static String name(Ground ground) {
    return switch (ground) {
      case NO_ROOM -> "too short a mast for the depth";
      case TOO_SLOW -> "too little wing for the slowest speed";
      case STALLED -> "a stalled wing";
      case STALL_MARGIN -> "stall margin";
      case THRUST -> "the drive's thrust";
      case FEET -> "the reach of the feet";
      case PITCH -> "a deck tilted too far";
      case BOARD_CLEARANCE -> "the board touching the chop";
      case TIP_DEPTH -> "a wing tip too near the surface";
      case PROPELLER_DEPTH -> "the propeller too near the surface";
      case STATIC_MARGIN -> "a foil that is unstable by itself";
      case CAVITATION -> "cavitation";
      case RATING -> "a maker's rating";
      case TAKE_OFF -> "take-off";
      case BOW_CLEAR -> "the fall forward of first flights";
      case BREACH -> "the breach of first flights";
    };
  }

  /** What is wrong, as a sentence about one setup. */
  public static String sentence(Ground ground) {
    return switch (ground) {
      case NO_ROOM -> "The mast is too short for the depth, or the drive is out of the water.";
      case TOO_SLOW -> "At the slow end of the ride the wings cannot carry the weight.";
      case STALLED -> "Somewhere in the ride a wing is past its stall.";
      case STALL_MARGIN -> "Somewhere in the ride too little is left to the stall.";
      case THRUST -> "Somewhere in the ride the drive does not give the thrust.";
      case FEET -> "Somewhere in the ride the feet cannot hold it, wherever they may stand.";
      case PITCH -> "Somewhere in the ride the deck is tilted too far.";
      case BOARD_CLEARANCE -> "Somewhere in the ride the board touches the chop.";
      case TIP_DEPTH -> "Somewhere in the ride a wing tip comes too near the surface.";
      case PROPELLER_DEPTH -> "Somewhere in the ride the propeller comes too near the surface.";
      case STATIC_MARGIN -> "Somewhere in the ride the foil by itself is unstable.";
      case CAVITATION -> "The wished speed is too near to cavitation.";
      case RATING -> "A part carries more than its maker rates it for.";
      case TAKE_OFF -> "The drive does not get it off the water with enough to spare.";
      case BOW_CLEAR ->
          "First flights: after a fall forward the bow meets the water too soon, whatever the remote"
              + " is set to.";
      case BREACH ->
          "First flights: after leaning back the foil comes out too soon, whatever the remote is set"
              + " to.";
    };
  }
}
