package trimwright.reference;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The results counted, figures recalled from memory apart from those read.
 *
 * @param byProvenance met and missed for every provenance
 * @param notInHand number of sources that could not be obtained
 */
public record CheckSummary(Map<Provenance, Tally> byProvenance, int notInHand) {

  /**
   * Met and missed.
   *
   * @param met results within tolerance
   * @param missed results outside tolerance, all of them in the ledger when the suite passes
   */
  public record Tally(int met, int missed) {
    private Tally plus(boolean isMet) {
      return isMet ? new Tally(met + 1, missed) : new Tally(met, missed + 1);
    }

    /** Met and missed together. */
    public int all() {
      return met + missed;
    }
  }

  /** Copies the map. */
  public CheckSummary {
    byProvenance = Map.copyOf(byProvenance);
  }

  /**
   * Counts results.
   *
   * @param results as {@link CheckRunner#runAll()} gives them
   */
  public static CheckSummary of(List<CheckResult> results) {
    Map<Provenance, Tally> tallies = new EnumMap<>(Provenance.class);
    for (Provenance provenance : Provenance.values()) {
      tallies.put(provenance, new Tally(0, 0));
    }
    for (CheckResult result : results) {
      tallies.compute(result.provenance(), (provenance, tally) -> tally.plus(result.met()));
    }
    return new CheckSummary(tallies, NotInHand.list().size());
  }

  /** Met and missed over every provenance. */
  public Tally total() {
    int met = byProvenance.values().stream().mapToInt(Tally::met).sum();
    int missed = byProvenance.values().stream().mapToInt(Tally::missed).sum();
    return new Tally(met, missed);
  }
}
