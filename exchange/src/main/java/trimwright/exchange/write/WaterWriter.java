package trimwright.exchange.write;

import java.util.List;
import java.util.Locale;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;

/** Water as JSON, CSV and as a table. */
public final class WaterWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-water/1";

  private WaterWriter() {}

  /**
   * The JSON document.
   *
   * @param table what to write
   * @return text that satisfies {@code water.schema.json}
   */
  public static String json(WaterTable table) {
    JsonDocument document = JsonDocument.start(FORMAT, table.digest());
    document
        .fields()
        .number("temperature_c", celsius(table))
        .number("salinity_g_kg", gramsPerKilogram(table))
        .number("density_kg_m3", table.water().density())
        .number("kinematic_viscosity_m2_s", table.water().kinematicViscosity())
        .number("vapour_pressure_pa", table.water().vapourPressure());
    return document.text();
  }

  /**
   * The same names and values as CSV.
   *
   * @param table what to write
   * @return the text
   */
  public static String csv(WaterTable table) {
    return Csv.text(
        List.of(
            "temperature_c",
            "salinity_g_kg",
            "density_kg_m3",
            "kinematic_viscosity_m2_s",
            "vapour_pressure_pa"),
        List.of(
            List.of(
                Csv.cell(celsius(table)),
                Csv.cell(gramsPerKilogram(table)),
                Csv.cell(table.water().density()),
                Csv.cell(table.water().kinematicViscosity()),
                Csv.cell(table.water().vapourPressure()))));
  }

  /**
   * The water as a table for a terminal.
   *
   * @param table what to write
   * @return the text
   */
  public static String table(WaterTable table) {
    return new TextTable()
        .words("water")
        .number("value", "")
        .words("unit")
        .row(List.of("temperature", Shown.decimals(celsius(table), 1), "°C"))
        .row(List.of("salinity", Shown.decimals(gramsPerKilogram(table), 1), "g/kg"))
        .row(List.of("density", Shown.decimals(table.water().density(), 2), "kg/m³"))
        .row(
            List.of(
                "kinematic viscosity",
                String.format(Locale.ROOT, "%.4e", table.water().kinematicViscosity()),
                "m²/s"))
        .row(List.of("vapour pressure", Shown.decimals(table.water().vapourPressure(), 0), "Pa"))
        .text();
  }

  private static double celsius(WaterTable table) {
    return Unit.CELSIUS.fromSi(table.temperature());
  }

  private static double gramsPerKilogram(WaterTable table) {
    return Unit.GRAM_PER_KILOGRAM.fromSi(table.salinity());
  }
}
