package trimwright.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the comma-separated tables shipped beside this class. */
final class Table {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .get();

  private Table() {}

  /**
   * All rows of a table.
   *
   * @param name file name of the resource
   * @throws IllegalStateException if there is no such table or a row has too few or too many cells
   */
  static List<CSVRecord> rows(String name) {
    try (InputStream in = Table.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no table " + name);
      }
      try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        List<CSVRecord> rows = FORMAT.parse(reader).getRecords();
        for (CSVRecord row : rows) {
          if (!row.isConsistent()) {
            throw new IllegalStateException(
                name
                    + ", row "
                    + row.getRecordNumber()
                    + ": "
                    + row.size()
                    + " cells do not fit the heading");
          }
        }
        return rows;
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read table " + name, e);
    }
  }
}
