package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;

/**
 * Keeps of all setups that pass the best for each front wing with a stabilizer under each board
 * set, the trade-off between two wishes, and how many fell on what.
 */
public final class BestFinds implements Finds {
  private record Key(String frontWing, String stabilizer, BoardSet upper) {}

  private final Tally tally = new Tally();
  private final Map<Key, Candidate> best = new HashMap<>();
  private final FrontLine front;
  private final Set<String> own;

  /**
   * Keeps nothing yet.
   *
   * @param one a wish that tables know
   * @param other another to trade it against
   * @param wishes their grades
   * @param own names of the parts of the rider's own setup; none where the stock has it not
   */
  public BestFinds(Wish one, Wish other, Wishes wishes, Set<String> own) {
    this.own = Set.copyOf(own);
    front = new FrontLine(one, other, wishes);
  }

  @Override
  public void take(BoardSet upper, FoilSet foil, List<Placement> placements) {
    List<StockPart<?>> parts = new ArrayList<>(8);
    upper.parts().forEach(parts::add);
    foil.parts().forEach(parts::add);
    tally.add(parts, placements);
    int others = (int) parts.stream().filter(part -> !own.contains(part.id())).count();
    Candidate first = null;
    for (Placement placement : placements) {
      if (placement.passes()) {
        Candidate candidate = new Candidate(upper, foil, placement, others);
        front.take(candidate);
        if (first == null || Candidate.ORDER.compare(candidate, first) < 0) {
          first = candidate;
        }
      }
    }
    if (first != null) {
      keep(first);
    }
  }

  private void keep(Candidate candidate) {
    FoilSet foil = candidate.foil();
    best.merge(
        new Key(foil.frontWing().id(), foil.stabilizer().id(), candidate.upper()),
        candidate,
        (a, b) -> Candidate.ORDER.compare(a, b) <= 0 ? a : b);
  }

  /**
   * What several threads have found, together.
   *
   * @param parts at least one
   */
  public static BestFinds together(List<BestFinds> parts) {
    BestFinds all = parts.get(0);
    for (BestFinds part : parts.subList(1, parts.size())) {
      all.tally.add(part.tally);
      all.front.add(part.front);
      part.best.values().forEach(all::keep);
    }
    return all;
  }

  /** How many setups passed and fell. */
  public Tally tally() {
    return tally;
  }

  /** The trade-off. */
  public FrontLine front() {
    return front;
  }

  /** The best of each front wing with a stabilizer under each board set, in order. */
  public List<Candidate> list() {
    return best.values().stream().sorted(Candidate.ORDER).toList();
  }
}
