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

  private final Amounts.Move move;
  private final String bound;
  private final boolean onBoard;
  private final boolean onTrack;

  private FeetCure(CaseFile caseFile, Amounts.Move move, String bound) {
    this.move = move;
    this.bound = bound;
    double shift = move.distance();
    Board board = caseFile.rideCase().setup().board();
    Rider rider = caseFile.rideCase().rider();
    double half = 0.5 * board.length();
    onBoard =
        rider.frontFoot() + shift + HALF_FOOT <= board.massCentreAhead() + half
            && rider.backFoot() + shift - HALF_FOOT >= board.massCentreAhead() - half;
    onTrack = Math.abs(board.track() - shift) <= TRACK_END;
  }

  /**
   * A cure that brings the load where it is wanted.
   *
   * @param caseFile the case
   * @param shift of the feet, forward positive [m]
   * @param amounts that the reader reads
   */
  static FeetCure of(CaseFile caseFile, double shift, Amounts amounts) {
    return new FeetCure(caseFile, amounts.move(shift), "");
  }

  /**
   * A cure that just lets the feet reach.
   *
   * @param caseFile the case
   * @param reach what is missing
   * @param amounts that the reader reads
   */
  static FeetCure of(CaseFile caseFile, FootReach reach, Amounts amounts) {
    return new FeetCure(caseFile, amounts.moveAtLeast(reach.shift()), "at least ");
  }

  /**
   * The orders, joined by "or".
   *
   * @return words without a capital or a full stop; empty where nothing along the board helps
   */
  String orders() {
    return String.join(", or ", list());
  }

  /** The first order alone; empty where nothing along the board helps. */
  String first() {
    List<String> all = list();
    return all.isEmpty() ? "" : all.get(0);
  }

  private List<String> list() {
    List<String> orders = new ArrayList<>(2);
    if (onBoard) {
      orders.add("move both feet " + bound + move.text() + (move.forward() ? " forward" : " back"));
    }
    if (onTrack) {
      orders.add(
          (onBoard ? "the mast " : "move the mast ")
              + bound
              + move.text()
              + (move.forward() ? " back" : " forward")
              + " in its track");
    }
    return orders;
  }

  /** What stands against moving the feet; empty where nothing does. */
  List<String> warnings() {
    return onBoard
        ? List.of()
        : List.of(
            "Moving only your feet by " + move.text() + " would put one of them off the board.");
  }
}
