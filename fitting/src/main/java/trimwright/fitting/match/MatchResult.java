package trimwright.fitting.match;

import java.util.List;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.wish.Wish;

/**
 * Which setups suit a rider.
 *
 * @param asked what was asked of each
 * @param tally how many passed the tables' limits, and how many fell on which
 * @param rows the best, one for each front wing with a stabilizer
 * @param fallen setups that passed the tables and broke a limit of the full solution, in the order
 *     in which they were looked at
 * @param looked how many were looked at by the full solution
 * @param sure whether no setup that is not shown can be better than the last shown, but for what
 *     tables miss
 * @param frontWishes the two wishes of the trade-off
 * @param front setups of which no other is better in one of the two and no worse in the other, by
 *     tables
 */
public record MatchResult(
    RideAsked asked,
    Tally tally,
    List<MatchRow> rows,
    List<Fallen> fallen,
    int looked,
    boolean sure,
    List<Wish> frontWishes,
    List<Candidate> front) {
  /** Copies the lists. */
  public MatchResult {
    rows = List.copyOf(rows);
    fallen = List.copyOf(fallen);
    frontWishes = List.copyOf(frontWishes);
    front = List.copyOf(front);
  }

  /**
   * A setup that fell at the full solution.
   *
   * @param candidate the setup, with what the tables say
   * @param judged what the full solution says
   */
  public record Fallen(Candidate candidate, Judged judged) {}
}
