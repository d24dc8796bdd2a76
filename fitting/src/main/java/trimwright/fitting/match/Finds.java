package trimwright.fitting.match;

import java.util.List;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;

/** Takes what a screen finds. Each belongs to one thread; they are put together at the end. */
public interface Finds {
  /**
   * A board set on a foil.
   *
   * @param upper all down to the mast's foot
   * @param foil the foil
   * @param placements one for each place of the board's track, from the hindmost on
   */
  void take(BoardSet upper, FoilSet foil, List<Placement> placements);
}
