package trimwright.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;

/** The tables of published values, read into {@link Check}s. */
final class CheckTable {
  /** The topics, each a table of its own, in the order in which they are shown. */
  static final List<String> TOPICS =
      List.of(
          "water",
          "section",
          "wing",
          "free-surface",
          "tail",
          "strut",
          "propeller",
          "planing",
          "limit",
          "wave",
          "motion");

  private CheckTable() {}

  /**
   * Every published value of every topic.
   *
   * @throws IllegalStateException if a row cannot be read, names an unknown source or repeats an id
   */
  static List<Check> all() {
    Map<String, Source> sources = Source.byKey();
    Map<String, Check> checks = new LinkedHashMap<>();
    for (String topic : TOPICS) {
      for (CSVRecord row : Table.rows("checks-" + topic + ".csv")) {
        Check check = check(topic, row, sources);
        if (checks.put(check.id(), check) != null) {
          throw new IllegalStateException("check " + check.id() + " stands in the tables twice");
        }
      }
    }
    return new ArrayList<>(checks.values());
  }

  private static Check check(String topic, CSVRecord row, Map<String, Source> sources) {
    String id = row.get("id");
    Source source = sources.get(row.get("source"));
    if (source == null) {
      throw new IllegalStateException(
          "check " + id + " names no listed source: " + row.get("source"));
    }
    String place = row.get("place");
    double expected = Double.parseDouble(row.get("expected"));
    return new Check(
        id,
        topic,
        row.get("quantity"),
        row.get("computation"),
        conditions(id, row.get("conditions")),
        expected,
        row.get("unit"),
        tolerance(row.get("tolerance"), expected),
        row.get("tolerance_reason"),
        source.citation() + (place.isEmpty() ? "" : ", " + place),
        Provenance.of(row.get("provenance")),
        row.get("notes"));
  }

  /**
   * A tolerance such as {@code 0.5%} is relative to the expected value, a plain one is absolute.
   */
  private static double tolerance(String text, double expected) {
    return text.endsWith("%")
        ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100 * Math.abs(expected)
        : Double.parseDouble(text);
  }

  private static Map<String, String> conditions(String id, String text) {
    Map<String, String> conditions = new LinkedHashMap<>();
    for (String part : text.split(";")) {
      String[] pair = part.split("=", 2);
      if (pair.length != 2 || conditions.put(pair[0].trim(), pair[1].trim()) != null) {
        throw new IllegalStateException("check " + id + ": cannot read condition '" + part + "'");
      }
    }
    return conditions;
  }
}
