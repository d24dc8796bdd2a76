package trimwright.web.trim;

import java.util.List;

/**
 * A table of figures. The first cell of a row names the row.
 *
 * @param caption what it shows
 * @param head names of the columns, with their units
 * @param rows its rows
 */
public record Table(String caption, List<Column> head, List<Row> rows) {
  /** Copies the lists. */
  public Table {
    head = List.copyOf(head);
    rows = List.copyOf(rows);
  }

  /**
   * A column's name.
   *
   * @param name what it holds
   * @param unit in what unit, may be empty
   */
  public record Column(String name, String unit) {}

  /**
   * A row.
   *
   * @param name what the row is
   * @param cells its figures
   * @param emphasis part, sum or marked; decides only how it looks
   */
  public record Row(String name, List<String> cells, Emphasis emphasis) {
    /** Copies the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** How a row stands out. */
  public enum Emphasis {
    /** An ordinary row. */
    NONE,
    /** A sum of the rows above it. */
    SUM,
    /** The row that the page is about. */
    MARKED
  }
}
