package trimwright.fitting.stock;

import trimwright.kernel.rig.Board;

/**
 * A board with the places of its track.
 *
 * @param board the board with the mast in the middle of its track
 * @param track where the mast can stand
 */
public record TrackedBoard(Board board, Track track) {
  /**
   * The board with its mast moved.
   *
   * @param place forward of the track's middle [m]
   */
  public Board at(double place) {
    return new Board(
        board.mass(),
        board.length(),
        board.width(),
        board.thickness(),
        board.volume(),
        board.massCentreAhead(),
        board.massCentreBelowDeck(),
        place);
  }
}
