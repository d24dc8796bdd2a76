package trimwright.exchange.write;

import java.util.List;
import trimwright.exchange.words.Shown;

/** The rows that section and wing share, in every format. */
final class PolarText {
  private static final List<String> NAMES =
      List.of("angle_of_attack_deg", "cl", "cd", "cm", "cp_min", "converged");

  private PolarText() {}

  static void json(JsonFields fields, List<PolarRow> rows) {
    fields.list(
        "points",
        rows,
        (item, row) ->
            item.number(NAMES.get(0), Shown.degrees(row.angleOfAttack()))
                .number(NAMES.get(1), row.lift())
                .number(NAMES.get(2), row.drag())
                .number(NAMES.get(3), row.moment())
                .number(NAMES.get(4), row.minimumPressure())
                .flag(NAMES.get(5), row.converged()));
  }

  static String csv(List<PolarRow> rows) {
    return Csv.text(NAMES, rows.stream().map(PolarText::csvRow).toList());
  }

  private static List<String> csvRow(PolarRow row) {
    // Not List.of: a cell may be null.
    return java.util.Arrays.asList(
        Csv.cell(Shown.degrees(row.angleOfAttack())),
        Csv.cell(row.lift()),
        Csv.cell(row.drag()),
        Csv.cell(row.moment()),
        Csv.cell(row.minimumPressure()),
        Boolean.toString(row.converged()));
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
              row.converged() ? "" : "past its limit"));
    }
    return table.text();
  }
}
