package trimwright.sheet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** Prints XHTML as a tagged PDF with the sheet's own fonts. Stateless. */
final class PdfPage {
  static {
    // Remarks of the libraries belong to nobody: a command prints its answer alone
    XRLog.setLoggingEnabled(false);
    // The machine's own fonts are never needed; looking through them takes seconds
    FontMappers.set(new ShippedFonts());
  }

  private PdfPage() {}

  /**
   * How many pages a document takes.
   *
   * @param xhtml well-formed, sizes in its style sheet
   * @return pages
   */
  static int count(String xhtml) {
    try (PdfBoxRenderer renderer = builder(xhtml).buildPdfRenderer()) {
      renderer.layout();
      return renderer.getRootBox().getLayer().getPages().size();
    }
  }

  /**
   * Prints a document.
   *
   * @param xhtml well-formed, sizes in its style sheet
   * @return the PDF
   */
  static byte[] print(String xhtml) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
      builder(xhtml).useSVGDrawer(svg).toStream(out).run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static PdfRendererBuilder builder(String xhtml) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.usePdfUaAccessibility(true);
    builder.withProducer("Trimwright");
    builder.useReplacementText(SheetFont.REPLACEMENT);
    font(builder, SheetFont.REGULAR, 400);
    font(builder, SheetFont.BOLD, 700);
    return builder.withHtmlContent(xhtml, null);
  }

  private static void font(PdfRendererBuilder builder, SheetFont face, int weight) {
    builder.useFont(
        () -> new ByteArrayInputStream(face.file()),
        SheetFont.FAMILY,
        weight,
        FontStyle.NORMAL,
        true);
  }
}
