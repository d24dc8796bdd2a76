package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.exchange.read.LimitKey;
import trimwright.exchange.read.LimitsFile;
import trimwright.kernel.limit.RideLimit;

/**
 * The limits that rides are held against, as JSON, CSV, a table, and the page that explains them.
 */
public final class LimitsWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-limits-table/1";

  /** No limit has another one. */
  private static final String SOURCE = "chosen, no source";

  private LimitsWriter() {}

  /**
   * The JSON document.
   *
   * @param file the limits
   * @return text that satisfies {@code limits.schema.json}
   */
  public static String json(LimitsFile file) {
    JsonDocument document = JsonDocument.start(FORMAT, file.digest());
    document
        .fields()
        .text("name", file.name())
        .list(
            "limits",
            Arrays.asList(LimitKey.values()),
            (item, key) ->
                item.text("key", key.key())
                    .number("figure", figure(file, key))
                    .number("chosen", key.shown(key.limit().chosen()))
                    .number("strictest", key.shown(key.limit().strictest()))
                    .text("unit", key.unit())
                    .text("bound", key.least())
                    .flag("tightened", file.limits().isTightened(key.limit()))
                    .text("source", SOURCE)
                    .text("reason", key.limit().reason()));
    return document.text();
  }

  /**
   * The same names and values as CSV, one row per limit.
   *
   * @param file the limits
   * @return the text
   */
  public static String csv(LimitsFile file) {
    List<List<String>> rows = new ArrayList<>();
    for (LimitKey key : LimitKey.values()) {
      RideLimit limit = key.limit();
      rows.add(
          List.of(
              key.key(),
              Csv.cell(figure(file, key)),
              Csv.cell(key.shown(limit.chosen())),
              Csv.cell(key.shown(limit.strictest())),
              key.unit(),
              key.least(),
              Boolean.toString(file.limits().isTightened(limit)),
              SOURCE,
              limit.reason()));
    }
    return Csv.text(
        List.of(
            "key",
            "figure",
            "chosen",
            "strictest",
            "unit",
            "bound",
            "tightened",
            "source",
            "reason"),
        rows);
  }

  /**
   * The limits as a table for a terminal.
   *
   * @param file the limits
   * @return the text
   */
  public static String table(LimitsFile file) {
    TextTable table = new TextTable().words("limit").words("").number("figure", "").words("unit");
    for (LimitKey key : LimitKey.values()) {
      table.row(
          List.of(
              key.key(),
              key.least(),
              plain(figure(file, key)),
              key.unit() + (file.limits().isTightened(key.limit()) ? " (tightened)" : "")));
    }
    return file.name()
        + "\n\n"
        + table.text()
        + "\nAll are chosen by judgement; no published source stands behind them. A shop may tighten"
        + " them,\nnot loosen them. That a ride lies inside them is no promise of safety.\n";
  }

  /**
   * The rows of the page that documents every limit, in Markdown.
   *
   * @return a table
   */
  public static String page() {
    StringBuilder text =
        new StringBuilder(
            "| key | holds | strictest accepted | where from | why |\n| --- | --- | --- | --- | --- |\n");
    for (LimitKey key : LimitKey.values()) {
      RideLimit limit = key.limit();
      text.append("| `").append(key.key()).append("` | ").append(key.least()).append(' ');
      text.append(amount(key, limit.chosen())).append(" | ");
      text.append(amount(key, limit.strictest())).append(" | ").append(SOURCE).append(" | ");
      text.append(limit.reason()).append(" |\n");
    }
    return text.toString();
  }

  private static double figure(LimitsFile file, LimitKey key) {
    return key.shown(file.limits().of(key.limit()));
  }

  private static String amount(LimitKey key, double value) {
    String gap = key.unit().isEmpty() || key.unit().equals("°") ? "" : " ";
    return plain(key.shown(value)) + gap + key.unit();
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
