package trimwright.fitting.match;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.stock.StockPart;

/** How many setups passed and how many fell, on which ground; over all and for each part. */
public final class Tally {
  /** Counts of one thing: one per ground, then those that passed. */
  private static final int PASSED = Ground.values().length;

  private final long[] all = new long[PASSED + 1];
  private final Map<String, long[]> parts = new TreeMap<>();

  /** Counts none yet. */
  public Tally() {}

  /** Counts the setups of a board set on a foil. */
  void add(Iterable<StockPart<?>> on, List<Placement> placements) {
    long[] counts = new long[PASSED + 1];
    for (Placement placement : placements) {
      counts[placement.ground().map(Ground::ordinal).orElse(PASSED)]++;
    }
    add(all, counts);
    for (StockPart<?> part : on) {
      add(parts.computeIfAbsent(part.id(), id -> new long[PASSED + 1]), counts);
    }
  }

  /** Adds what another has counted. */
  void add(Tally other) {
    add(all, other.all);
    other.parts.forEach(
        (id, counts) -> add(parts.computeIfAbsent(id, key -> new long[PASSED + 1]), counts));
  }

  private static void add(long[] sum, long[] counts) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += counts[i];
    }
  }

  /** Counts of all setups. */
  public Counts all() {
    return new Counts(all);
  }

  /** Counts of the setups that a part is in; of none where it is in none. */
  public Counts of(StockPart<?> part) {
    return new Counts(parts.getOrDefault(part.id(), new long[PASSED + 1]));
  }

  /** How many passed, and how many fell on which ground. Immutable. */
  public static final class Counts {
    private final long[] counts;

    private Counts(long[] counts) {
      this.counts = counts.clone();
    }

    /** How many setups there are. */
    public long setups() {
      long sum = 0;
      for (long count : counts) {
        sum += count;
      }
      return sum;
    }

    /** How many pass all limits that the tables know. */
    public long passed() {
      return counts[PASSED];
    }

    /** How many fell on a ground, which was the first that they broke. */
    public long fell(Ground ground) {
      return counts[ground.ordinal()];
    }
  }
}
