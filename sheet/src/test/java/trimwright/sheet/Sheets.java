package trimwright.sheet;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;

/** Cases to print, and sheets read back. */
final class Sheets {
  static final LocalDate DAY = LocalDate.of(2026, 5, 31);

  private Sheets() {}

  static String demo(String id) {
    return DemoCases.find(id).orElseThrow().text();
  }

  static CaseFile read(String text) {
    var reading = CaseReader.read(text, SectionFiles.NONE);
    return reading
        .findValue()
        .orElseThrow(() -> new IllegalArgumentException(reading.problems().toString()));
  }

  /** A demo case's text without a part of its setup. */
  static String without(String text, String part) {
    String less = text.replaceAll("(?m)^  " + part + ":.*\\n(    .*\\n)*", "");
    if (less.equals(text)) {
      throw new IllegalArgumentException("there is no " + part);
    }
    return less;
  }

  /** A demo case's text under another name. */
  static String named(String text, String name) {
    return text.replaceFirst("(?m)^name:.*$", "name: \"" + name + "\"");
  }

  static SheetChoice choice(Paper paper, Measures measures, String rider) {
    return new SheetChoice(paper, measures, rider, DAY);
  }

  static byte[] print(CaseFile caseFile, double kmh, SheetChoice choice) {
    return SetupSheet.pdf(caseFile, kmh / 3.6, choice);
  }

  /** All text of a page in reading order, without any white space. */
  static String text(PDDocument document) throws IOException {
    return squeezed(new PDFTextStripper().getText(document));
  }

  static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return text(document);
    }
  }

  static String squeezed(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "");
  }

  /** Every letter of a page with its place. */
  static List<TextPosition> letters(PDDocument document) throws IOException {
    List<TextPosition> all = new ArrayList<>();
    new PDFTextStripper() {
      @Override
      protected void processTextPosition(TextPosition text) {
        all.add(text);
      }
    }.getText(document);
    return all;
  }
}
