package trimwright.exchange.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Comma-separated values by RFC 4180, with a heading line; what does not exist is an empty cell.
 */
final class Csv {
  private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setNullString("").get();

  private Csv() {}

  /**
   * A file's text.
   *
   * @param head column names
   * @param rows cells; null for what does not exist
   * @return the text
   */
  static String text(List<String> head, List<List<String>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(head);
      for (List<String> row : rows) {
        printer.printRecord(row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a string builder does not fail to be written", e);
    }
    return out.toString();
  }

  /** A number's cell: the same digits as in JSON. */
  static String cell(double value) {
    return Double.isFinite(value) ? Double.toString(JsonFields.rounded(value)) : null;
  }

  /** A number's cell with all digits. */
  static String exactCell(double value) {
    return Double.isFinite(value) ? Double.toString(value + 0.0) : null;
  }

  /** A cell of what may not exist. */
  static String cell(OptionalDouble value) {
    return value.isPresent() ? cell(value.getAsDouble()) : null;
  }
}
