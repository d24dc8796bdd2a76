package trimwright.reference;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** The one list of checks that are known to miss, with the computed figure and the reason. */
public final class Ledger {
  /** Room for the rounding of the printed figure itself, relative to its last digit [1]. */
  private static final double ROUNDING = 1e-6;

  private final Map<String, Entry> entries;

  private Ledger(Map<String, Entry> entries) {
    this.entries = entries;
  }

  /**
   * One known miss.
   *
   * @param id the check
   * @param computed the figure as printed in the ledger, in the check's unit
   * @param reason why the computation differs
   */
  public record Entry(String id, String computed, String reason) {
    /** Whether a computed figure is the one printed here, to the printed digits. */
    boolean prints(double figure) {
      BigDecimal printed = new BigDecimal(computed);
      double half = 0.5 * printed.ulp().doubleValue();
      return Math.abs(figure - printed.doubleValue()) <= half * (1 + ROUNDING);
    }
  }

  /** The shipped ledger. */
  public static Ledger shipped() {
    return of(Table.rows("ledger.csv"));
  }

  private static Ledger of(List<CSVRecord> rows) {
    List<Entry> entries = new ArrayList<>();
    for (CSVRecord row : rows) {
      entries.add(new Entry(row.get("id"), row.get("computed"), row.get("reason")));
    }
    return of(entries.toArray(Entry[]::new));
  }

  /**
   * A ledger of given entries.
   *
   * @throws IllegalArgumentException if an id stands twice or a reason is missing
   */
  static Ledger of(Entry... entries) {
    Map<String, Entry> map = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (entry.reason().isBlank() || map.put(entry.id(), entry) != null) {
        throw new IllegalArgumentException(
            "ledger entry " + entry.id() + " stands twice or gives no reason");
      }
    }
    return new Ledger(map);
  }

  /** Every known miss. */
  public List<Entry> list() {
    return List.copyOf(entries.values());
  }

  /** The entry of a check, where it is a known miss. */
  public Optional<Entry> find(String id) {
    return Optional.ofNullable(entries.get(id));
  }

  /**
   * What is wrong between results and ledger: a miss that is not in it, an entry that is met now or
   * whose figure has moved, an entry without a check.
   *
   * @param results all results
   * @return one sentence for each fault; empty when all is as the ledger says
   */
  public List<String> faults(List<CheckResult> results) {
    List<String> faults = new ArrayList<>();
    Map<String, Entry> left = new LinkedHashMap<>(entries);
    for (CheckResult result : results) {
      Entry entry = left.remove(result.id());
      if (entry == null && !result.met()) {
        faults.add(
            "%s misses: expected %s, computed %s, tolerance %s %s"
                .formatted(
                    result.id(),
                    result.expected(),
                    result.computed(),
                    result.tolerance(),
                    result.unit()));
      } else if (entry != null && result.met()) {
        faults.add(result.id() + " stands in the ledger but is met now: " + result.computed());
      } else if (entry != null && !entry.prints(result.computed())) {
        faults.add(
            "%s: the ledger says %s, computed is %s"
                .formatted(result.id(), entry.computed(), result.computed()));
      }
    }
    left.keySet().forEach(id -> faults.add(id + " stands in the ledger but is no check"));
    return faults;
  }
}
