package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;

/**
 * A table for a terminal: one line of heads, one of units, columns as wide as their widest cell,
 * numbers to the right and words to the left.
 */
public final class TextTable {
  private static final String GAP = "  ";

  private final List<Column> columns = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  private record Column(String head, String unit, boolean right) {}

  /** A table without columns or rows yet. */
  public TextTable() {}

  /**
   * A column of numbers.
   *
   * @param head name
   * @param unit symbol, may be empty
   * @return this
   */
  public TextTable number(String head, String unit) {
    columns.add(new Column(head, unit, true));
    return this;
  }

  /**
   * A column of words.
   *
   * @param head name
   * @return this
   */
  public TextTable words(String head) {
    columns.add(new Column(head, "", false));
    return this;
  }

  /**
   * A row.
   *
   * @param cells one per column
   * @return this
   * @throws IllegalArgumentException if there are more or fewer cells than columns
   */
  public TextTable row(List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(
          "a row needs " + columns.size() + " cells, was " + cells.size());
    }
    rows.add(List.copyOf(cells));
    return this;
  }

  /** The table, each line ended. */
  public String text() {
    StringBuilder out = new StringBuilder();
    line(out, columns.stream().map(Column::head).toList());
    if (columns.stream().anyMatch(c -> !c.unit().isEmpty())) {
      line(out, columns.stream().map(Column::unit).toList());
    }
    rows.forEach(row -> line(out, row));
    return out.toString();
  }

  private void line(StringBuilder out, List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      String cell = cells.get(i);
      String space = " ".repeat(width(i) - cell.length());
      line.append(i == 0 ? "" : GAP);
      line.append(columns.get(i).right() ? space + cell : cell + space);
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }

  private int width(int column) {
    int width = Math.max(columns.get(column).head().length(), columns.get(column).unit().length());
    for (List<String> row : rows) {
      width = Math.max(width, row.get(column).length());
    }
    return width;
  }
}
