package trimwright.fitting.match;

import java.util.List;
import trimwright.fitting.judge.Judged;

/**
 * A setup that passes every limit by the full solution, with its place.
 *
 * @param rank one more than the rows that are better beyond the bands
 * @param ties indices of the rows that it cannot be told from, in the list of rows
 * @param candidate the setup, with what the tables say
 * @param judged what the full solution says
 * @param shortfall of all wishes by the full solution [1]
 * @param reach half the width of its band, two standard deviations [1]
 * @param varied what it is worth when something is other
 */
public record MatchRow(
    int rank,
    List<Integer> ties,
    Candidate candidate,
    Judged judged,
    double shortfall,
    double reach,
    List<Varied> varied) {
  /** Copies the lists. */
  public MatchRow {
    ties = List.copyOf(ties);
    varied = List.copyOf(varied);
  }

  /** The worst of the ride as asked and all variations, at the far end of its band [1]. */
  public double worst() {
    return reach + varied.stream().mapToDouble(Varied::shortfall).reduce(shortfall, Math::max);
  }

  /** The mean of the ride as asked and all variations [1]; infinite where one is lost. */
  public double mean() {
    return (shortfall + varied.stream().mapToDouble(Varied::shortfall).sum()) / (1 + varied.size());
  }
}
