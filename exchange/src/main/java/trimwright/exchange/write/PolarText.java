package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.exchange.words.Shown;
import trimwright.kernel.section.PointKind;

/** The rows that section and wing share, in every format. */
final class PolarText {
  private static final List<String> NAMES =
      List.of("angle_of_attack_deg", "cl", "cd", "cm", "cp_min", "converged");

  /** How a section's point came about. */
  private static final String KIND = "kind";

  private PolarText() {}

  /** The rows of a wing. */
  static void json(JsonFields fields, List<PolarRow> rows) {
    fields.list("points", rows, PolarText::item);
  }

  /** The rows of a section: with the kind of each. */
  static void jsonWithKinds(JsonFields fields, List<PolarRow> rows) {
    fields.list(
        "points",
        rows,
        (item, row) -> {
          item(item, row);
          row.kind().ifPresentOrElse(k -> item.text(KIND, code(k)), () -> item.none(KIND));
        });
  }

  private static void item(JsonFields item, PolarRow row) {
    item.number(NAMES.get(0), Shown.degrees(row.angleOfAttack()))
        .number(NAMES.get(1), row.lift())
        .number(NAMES.get(2), row.drag())
        .number(NAMES.get(3), row.moment())
        .number(NAMES.get(4), row.minimumPressure())
        .flag(NAMES.get(5), row.converged());
  }

  private static String code(PointKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  static String csv(List<PolarRow> rows) {
    return Csv.text(NAMES, rows.stream().map(PolarText::cells).toList());
  }

  static String csvWithKinds(List<PolarRow> rows) {
    List<String> names = new ArrayList<>(NAMES);
    names.add(KIND);
    return Csv.text(
        names,
        rows.stream()
            .map(
                row -> {
                  List<String> cells = cells(row);
                  cells.add(row.kind().map(PolarText::code).orElse(null));
                  return cells;
                })
            .toList());
  }

  private static List<String> cells(PolarRow row) {
    // Not List.of: a cell may be null.
    List<String> cells = new ArrayList<>();
    cells.add(Csv.cell(Shown.degrees(row.angleOfAttack())));
    cells.add(Csv.cell(row.lift()));
    cells.add(Csv.cell(row.drag()));
    cells.add(Csv.cell(row.moment()));
    cells.add(Csv.cell(row.minimumPressure()));
    cells.add(Boolean.toString(row.converged()));
    return cells;
  }

  static String table(List<PolarRow> rows) {
    TextTable table =
        new TextTable()
            .number("angle", "deg")
            .number("cl", "")
            .number("cd", "")
            .number("cm", "")
            .number("cp min", "")
            .words("");
    for (PolarRow row : rows) {
      table.row(
          List.of(
              Shown.decimals(Shown.degrees(row.angleOfAttack()), 2),
              Shown.decimals(row.lift(), 4),
              Shown.decimals(row.drag(), 5),
              Shown.decimals(row.moment(), 4),
              Shown.decimals(row.minimumPressure(), 3),
              remark(row)));
    }
    return table.text();
  }

  private static String remark(PolarRow row) {
    PointKind kind = row.kind().orElse(PointKind.COMPUTED);
    return switch (kind) {
      case BRIDGED -> "bridged";
      case EXTENDED -> "by rule";
      case COMPUTED -> row.converged() ? "" : "past its limit";
    };
  }
}
