package trimwright.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import trimwright.exchange.read.CaseFile;

/** The sheet that a rider takes home: one page, as PDF. Stateless and safe for several threads. */
public final class SetupSheet {
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "trimwright.sheet.template");

  private static final String STYLE = resource("sheet.css");

  private SetupSheet() {}

  /**
   * Prints the sheet of a case. The airiest layout that fits on the page is taken.
   *
   * @param caseFile the case
   * @param speed that the sheet is for [m/s], within 1 to 100 km/h
   * @param choice paper, units, name and date
   * @return a PDF of exactly one page, tagged, its fonts embedded
   * @throws IllegalStateException if even the densest layout needs more than a page
   */
  public static byte[] pdf(CaseFile caseFile, double speed, SheetChoice choice) {
    Objects.requireNonNull(caseFile, "caseFile");
    Objects.requireNonNull(choice, "choice");
    SheetAuthor author = new SheetAuthor(caseFile, speed, choice);
    // Between a layout that fits and one that does not the density is halved; pictures are drawn
    // for the last one alone
    int fits = SheetLayout.STEPS;
    int airier = -1;
    while (fits - airier > 1) {
      int step = (fits + airier) / 2;
      if (PdfPage.count(xhtml(author, choice, step, false)) == 1) {
        fits = step;
      } else {
        airier = step;
      }
    }
    if (fits == SheetLayout.STEPS) {
      throw new IllegalStateException("the sheet of this case does not fit on one page");
    }
    return PdfPage.print(xhtml(author, choice, fits, true));
  }

  private static String xhtml(SheetAuthor author, SheetChoice choice, int step, boolean drawn) {
    SheetLayout layout = author.layout(choice.paper(), step);
    String style = layout.pageStyle() + STYLE;
    StringOutput out = new StringOutput();
    ENGINE.render(
        "sheet.jte",
        Map.of("page", author.page(layout, drawn), "layout", layout, "style", style),
        out);
    return out.toString();
  }

  private static String resource(String name) {
    try (InputStream in = SetupSheet.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
