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
import java.util.Optional;
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
    // Between a layout that fits and one that does not the density is halved, so that a print
    // tries four layouts and not all
    int fits = SheetLayout.STEPS;
    int airier = -1;
    Optional<byte[]> best = Optional.empty();
    while (fits - airier > 1) {
      int step = (fits + airier) / 2;
      Optional<byte[]> found = PdfPage.find(xhtml(author, choice, step));
      if (found.isPresent()) {
        best = found;
        fits = step;
      } else {
        airier = step;
      }
    }
    return best.orElseThrow(
        () -> new IllegalStateException("the sheet of this case does not fit on one page"));
  }

  private static String xhtml(SheetAuthor author, SheetChoice choice, int step) {
    SheetLayout layout = author.layout(choice.paper(), step);
    StringOutput out = new StringOutput();
    ENGINE.render(
        "sheet.jte",
        Map.of("page", author.page(layout), "layout", layout, "style", layout.pageStyle() + STYLE),
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
