package trimwright.exchange.write;

import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.Amounts;
import trimwright.exchange.words.Shown;

/** Says that a setup sheet was printed, and of what. */
public final class SheetWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-sheet/1";

  /** A sheet is one page, whatever stands on it. */
  private static final int PAGES = 1;

  private SheetWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param speed that the sheet is for [m/s]
   * @param file that holds it, as it was named
   * @return text that satisfies {@code sheet.schema.json}
   */
  public static String json(CaseFile caseFile, double speed, String file) {
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    document
        .fields()
        .text("name", caseFile.name())
        .text("sections", SectionCode.of(caseFile))
        .number("speed_kmh", Shown.kmh(speed))
        .text("file", file)
        .number("pages", PAGES);
    return document.text();
  }

  /**
   * The same in a line.
   *
   * @param caseFile the case
   * @param speed that the sheet is for [m/s]
   * @param file that holds it, as it was named
   * @param measures units of the speed
   * @return one line
   */
  public static String line(CaseFile caseFile, double speed, String file, Measures measures) {
    return "Printed the setup sheet of "
        + caseFile.name()
        + " for "
        + Amounts.of(measures).speed(speed)
        + " to "
        + file
        + ".\n";
  }
}
