package trimwright.fitting.match;

import java.util.Comparator;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;

/**
 * A setup that the screen lets pass.
 *
 * @param upper all down to the mast's foot
 * @param foil the foil
 * @param placement where mast and feet stand, and what that gives by tables
 * @param others how many of its parts are others than the rider's own setup has
 */
public record Candidate(BoardSet upper, FoilSet foil, Placement placement, int others) {
  /**
   * What falls short the least first; of equal ones that which changes the fewest parts of the
   * rider's own setup, then that with the mast nearest to its track's middle and the feet where
   * they are, then by the parts' names: the same whoever finds it first.
   */
  public static final Comparator<Candidate> ORDER =
      Comparator.<Candidate>comparingDouble(c -> c.placement.shortfall())
          .thenComparingInt(Candidate::others)
          .thenComparingDouble(c -> Math.abs(c.placement.track()))
          .thenComparingDouble(c -> Math.abs(c.placement.feet()))
          .thenComparingDouble(c -> c.placement.track())
          .thenComparing(Candidate::names);

  private String names() {
    StringBuilder names = new StringBuilder();
    setup().parts().map(StockPart::id).forEach(id -> names.append(id).append(' '));
    return names.toString();
  }

  /** The setup with its settings. */
  public StockSetup setup() {
    return new StockSetup(upper, foil, placement.track());
  }
}
