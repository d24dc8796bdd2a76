package trimwright.reference;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One entry of the numbered list of sources.
 *
 * @param number its number in the list
 * @param key short name by which the tables call it
 * @param citation author, title, year
 * @param gives what is taken from it
 * @param seen how it came here: {@code read}, {@code second hand} or {@code memory}
 * @param usedBy packages that stand on it
 */
public record Source(
    int number, String key, String citation, String gives, String seen, String usedBy) {

  private static final String FILE = "sources.csv";

  /** The whole list, in order of numbers. */
  public static List<Source> list() {
    return Table.rows(FILE).stream()
        .map(
            row ->
                new Source(
                    Integer.parseInt(row.get("number")),
                    row.get("key"),
                    row.get("citation"),
                    row.get("gives"),
                    row.get("seen"),
                    row.get("used_by")))
        .toList();
  }

  static Map<String, Source> byKey() {
    return list().stream().collect(Collectors.toMap(Source::key, Function.identity()));
  }
}
