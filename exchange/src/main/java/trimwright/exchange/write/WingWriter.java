package trimwright.exchange.write;

import java.util.OptionalDouble;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;

/** One wing alone as JSON, CSV and as a table. */
public final class WingWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-wing/1";

  private WingWriter() {}

  /**
   * The JSON document.
   *
   * @param table what to write
   * @return text that satisfies {@code wing.schema.json}
   */
  public static String json(WingTable table) {
    JsonDocument document = JsonDocument.start(FORMAT, table.digest());
    JsonFields fields =
        document
            .fields()
            .text("name", table.name())
            .text("sections", table.sections())
            .number("speed_kmh", Shown.kmh(table.speed()))
            .number("immersion_mm", millimetres(table.immersion()))
            .number("area_cm2", Unit.SQUARE_CENTIMETRE.fromSi(table.area()))
            .number("span_mm", Shown.mm(table.span()));
    PolarText.json(fields, table.rows());
    fields
        .number("zero_lift_angle_deg", Shown.degrees(table.zeroLiftAngle()))
        .number("lift_slope_per_rad", table.liftSlope())
        .number("moment_slope_per_rad", table.momentSlope())
        .number("induced_drag_factor", table.inducedDragFactor())
        .number("cl_max", table.maximumLift());
    return document.text();
  }

  /**
   * The points as CSV.
   *
   * @param table what to write
   * @return the text
   */
  public static String csv(WingTable table) {
    return PolarText.csv(table.rows());
  }

  /**
   * The wing as a table for a terminal.
   *
   * @param table what to write
   * @return the text
   */
  public static String table(WingTable table) {
    OptionalDouble depth = millimetres(table.immersion());
    return table.name()
        + " at "
        + Shown.decimals(Shown.kmh(table.speed()), 1)
        + " km/h, "
        + (depth.isPresent()
            ? Shown.decimals(depth.getAsDouble(), 0) + " mm deep"
            : "in deep water")
        + "\n\n"
        + PolarText.table(table.rows())
        + "\nzero lift at "
        + Shown.decimals(Shown.degrees(table.zeroLiftAngle()), 2)
        + " deg, lift slope "
        + Shown.decimals(table.liftSlope(), 3)
        + " per rad, moment slope "
        + Shown.decimals(table.momentSlope(), 3)
        + " per rad, induced drag factor "
        + Shown.decimals(table.inducedDragFactor(), 4)
        + (table.maximumLift().isPresent()
            ? ", largest cl " + Shown.decimals(table.maximumLift().getAsDouble(), 2)
            : "")
        + "\nMoment about the root's quarter chord, nose-up positive, on area and mean chord.\n";
  }

  private static OptionalDouble millimetres(OptionalDouble length) {
    return length.isPresent()
        ? OptionalDouble.of(Shown.mm(length.getAsDouble()))
        : OptionalDouble.empty();
  }
}
