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
import java.util.Optional;
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
   * Prints a document if it fits on one page.
   *
   * @param xhtml well-formed, sizes in its style sheet
   * @return the PDF, or nothing where it needs more than one page
   */
  static Optional<byte[]> find(String xhtml) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFastMode();
    builder.usePdfUaAccessibility(true);
    builder.withProducer("Trimwright");
    builder.useReplacementText(SheetFont.REPLACEMENT);
    font(builder, SheetFont.REGULAR, 400);
    font(builder, SheetFont.BOLD, 700);
    builder.withHtmlContent(xhtml, null);
    builder.toStream(out);
    try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
      builder.useSVGDrawer(svg);
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.layout();
        if (renderer.getRootBox().getLayer().getPages().size() != 1) {
          return Optional.empty();
        }
        renderer.createPDF();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Optional.of(out.toByteArray());
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
