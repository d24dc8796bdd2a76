package trimwright.exchange.write;

import trimwright.exchange.words.Shown;

/** A section's table as JSON, CSV and as a table. */
public final class SectionWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-section/1";

  private SectionWriter() {}

  /**
   * The JSON document.
   *
   * @param table what to write
   * @return text that satisfies {@code section.schema.json}
   */
  public static String json(SectionTable table) {
    JsonDocument document = JsonDocument.start(FORMAT, table.digest());
    JsonFields fields =
        document.fields().text("name", table.name()).number("reynolds", table.reynolds());
    PolarText.jsonWithKinds(fields, table.rows());
    fields
        .number("zero_lift_angle_deg", Shown.degrees(table.zeroLiftAngle()))
        .number("lift_slope_per_rad", table.liftSlope())
        .number("cl_max", table.maximumLift())
        .texts("repairs", table.repairs());
    if (table.layers().isPresent()) {
      SectionTable.Layers layers = table.layers().get();
      fields
          .object("layers")
          .whole("computed", layers.computed())
          .whole("bridged", layers.bridged())
          .whole("extended", layers.extended());
    } else {
      fields.none("layers");
    }
    return document.text();
  }

  /**
   * The points as CSV.
   *
   * @param table what to write
   * @return the text
   */
  public static String csv(SectionTable table) {
    return PolarText.csvWithKinds(table.rows());
  }

  /**
   * The section as a table for a terminal.
   *
   * @param table what to write
   * @return the text
   */
  public static String table(SectionTable table) {
    return table.name()
        + " at a Reynolds number of "
        + Shown.decimals(table.reynolds(), 0)
        + "\n\n"
        + PolarText.table(table.rows())
        + "\nzero lift at "
        + Shown.decimals(Shown.degrees(table.zeroLiftAngle()), 2)
        + " deg, lift slope "
        + Shown.decimals(table.liftSlope(), 3)
        + " per rad"
        + (table.maximumLift().isPresent()
            ? ", largest cl " + Shown.decimals(table.maximumLift().getAsDouble(), 2)
            : "")
        + "\n"
        + table.layers().map(SectionWriter::sentence).orElse("")
        + (table.repairs().isEmpty() ? "" : "\n" + String.join("\n", table.repairs()) + "\n");
  }

  private static String sentence(SectionTable.Layers layers) {
    int all = layers.computed() + layers.bridged() + layers.extended();
    return "boundary layers: "
        + layers.computed()
        + " of "
        + all
        + " angles computed, "
        + layers.bridged()
        + " bridged between neighbours, "
        + layers.extended()
        + " beyond by a rule for deep stall (marked above)\n";
  }
}
