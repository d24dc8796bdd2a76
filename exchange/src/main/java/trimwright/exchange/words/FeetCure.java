package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Rider;

/**
 * The ways of bringing feet and pressure centre together by moving things along the board. The
 * pressure centre stays with the mast, so the mast in its track goes the other way than the feet.
 */
final class FeetCure {
  /** Half the width of a foot that stands across the board [m]. Chosen. */
  private static final double HALF_FOOT = 0.05;

  /** Ends of {@code track_mm} in a case file [m]. */
  private static final double TRACK_END = 0.4;

  private final double shift;
  private final boolean onBoard;
  private final boolean onTrack;

  /**
   * A cure.
   *
   * @param caseFile the case
   * @param shift of the feet, forward positive [m]
   */
  FeetCure(CaseFile caseFile, double shift) {
    this.shift = shift;
    Board board = caseFile.rideCase().setup().board();
    Rider rider = caseFile.rideCase().rider();
    double half = 0.5 * board.length();
    onBoard =
        rider.frontFoot() + shift + HALF_FOOT <= board.massCentreAhead() + half
            && rider.backFoot() + shift - HALF_FOOT >= board.massCentreAhead() - half;
    onTrack = Math.abs(board.track() - shift) <= TRACK_END;
  }

  /**
   * The orders, joined by "or".
   *
   * @param bound empty or such as {@code "at least "}
   * @return words without a capital or a full stop; empty where nothing along the board helps
   */
  String orders(String bound) {
    List<String> orders = new ArrayList<>();
    String far = bound + (bound.isEmpty() ? far() : FootReach.roundedUp(shift));
    if (onBoard) {
      orders.add("move both feet " + far + (shift > 0 ? " forward" : " back"));
    }
    if (onTrack) {
      orders.add(
          (onBoard ? "the mast " : "move the mast ")
              + far
              + (shift > 0 ? " back" : " forward")
              + " in its track");
    }
    return String.join(", or ", orders);
  }

  /** The first order alone. */
  String first() {
    String all = orders("");
    int or = all.indexOf(", or ");
    return or < 0 ? all : all.substring(0, or);
  }

  /** What stands against moving the feet; empty where nothing does. */
  List<String> warnings() {
    return onBoard
        ? List.of()
        : List.of("Moving only your feet by " + far() + " would put one of them off the board.");
  }

  private String far() {
    double mm = Math.abs(Shown.mm(shift));
    return Shown.decimals(mm, 0) + " mm";
  }
}
