package trimwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.desk.CaseStudy;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.ShimWords;

class SetupSheetTest {
  /** Half a point of play: glyphs overhang their advance a little [pt]. */
  private static final double OVERHANG = 0.5;

  private static final double MARGIN = 10 / 25.4 * 72;
  private static final int LARGEST_FILE = 300_000;
  private static final String RIDER = "Żółć Ελένη Ольга";

  static Stream<Arguments> everyDemo() {
    List<Arguments> all = new ArrayList<>();
    for (DemoCase demo : DemoCases.list()) {
      for (Paper paper : Paper.values()) {
        for (Measures measures : Measures.values()) {
          all.add(Arguments.of(demo.id(), paper, measures));
        }
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("everyDemo")
  void everyDemoCaseFitsOnOnePage(String id, Paper paper, Measures measures) throws Exception {
    CaseFile caseFile = Sheets.read(Sheets.demo(id));
    double kmh = 3.6 * caseFile.rideCase().rider().wishedSpeed();
    SheetChoice choice = Sheets.choice(paper, measures, RIDER);
    assertWhole(caseFile, kmh, choice, Sheets.print(caseFile, kmh, choice));
  }

  static Stream<Arguments> oddCases() {
    String beginner = Sheets.demo("heavy-beginner");
    String carver = Sheets.demo("light-carver");
    String longest = "Ωκεανός Северное море łąka ".repeat(5).substring(0, 118) + "Z.";
    String oneWord = "W".repeat(120);
    return Stream.of(
        Arguments.of(
            "no drive", Sheets.without(Sheets.without(beginner, "drive"), "battery"), 21.0, RIDER),
        Arguments.of("too slow", beginner, 6.0, RIDER),
        Arguments.of("power short", beginner, 60.0, RIDER),
        Arguments.of("far from the wish", carver, 17.0, RIDER),
        Arguments.of(
            "feet cannot reach",
            carver.replace("front_foot_mm: 390", "front_foot_mm: 140"),
            29.0,
            RIDER),
        Arguments.of(
            "many cures",
            carver
                .replace("front_foot_mm: 390", "front_foot_mm: 480")
                .replace("back_foot_mm: -60", "back_foot_mm: 60"),
            20.0,
            RIDER),
        Arguments.of(
            "far along the track", carver.replace("track_mm: 0", "track_mm: 85"), 29.0, RIDER),
        Arguments.of("long name", Sheets.named(beginner, longest), 21.0, longest),
        Arguments.of("one long word", Sheets.named(beginner, oneWord), 21.0, oneWord));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("oddCases")
  void anOddCaseFitsOnOnePage(String what, String text, double kmh, String rider) throws Exception {
    CaseFile caseFile = Sheets.read(text);
    SheetChoice choice = Sheets.choice(Paper.LETTER, Measures.METRIC, rider);
    assertWhole(caseFile, kmh, choice, Sheets.print(caseFile, kmh, choice));
  }

  private static void assertWhole(CaseFile caseFile, double kmh, SheetChoice choice, byte[] pdf)
      throws Exception {
    assertThat(pdf.length).isLessThan(LARGEST_FILE);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      var page = document.getPage(0);
      assertThat((double) page.getMediaBox().getWidth())
          .isCloseTo(choice.paper().width() / 25.4 * 72, org.assertj.core.data.Offset.offset(1.0));
      assertThat((double) page.getMediaBox().getHeight())
          .isCloseTo(choice.paper().height() / 25.4 * 72, org.assertj.core.data.Offset.offset(1.0));
      String text = Sheets.text(document);
      for (String expected : expected(caseFile, kmh, choice)) {
        assertThat(text).contains(Sheets.squeezed(expected));
      }
      assertThat(text).doesNotContainIgnoringCase("safe").doesNotContain("NaN");
      for (TextPosition letter : Sheets.letters(document)) {
        assertThat((double) letter.getXDirAdj()).isGreaterThan(MARGIN - OVERHANG);
        assertThat((double) letter.getXDirAdj() + letter.getWidthDirAdj())
            .as(letter.getUnicode())
            .isLessThan(page.getMediaBox().getWidth() - MARGIN + OVERHANG);
        assertThat((double) letter.getYDirAdj())
            .isBetween(MARGIN, page.getMediaBox().getHeight() - MARGIN + OVERHANG);
      }
      assertFonts(page.getResources());
      assertTagged(document);
    }
  }

  private static List<String> expected(CaseFile caseFile, double kmh, SheetChoice choice) {
    Measures measures = choice.measures();
    List<String> all = new ArrayList<>();
    all.add(caseFile.name());
    all.add(choice.riderName());
    all.add("31 May 2026");
    all.add(caseFile.digest().substring(0, 12));
    ShimWords shim =
        ShimWords.of(caseFile.rideCase().setup().shim(), caseFile.notes().stabilizerMounting());
    all.add(shim.fitting());
    all.add(shim.warning());
    CauseWords cause = CauseWords.of(caseFile, CaseStudy.of(caseFile).cause(kmh / 3.6), measures);
    all.add(cause.headline());
    cause.sentences().stream().limit(2).forEach(all::add);
    cause.ruleOutFirst().stream().map(RuleOut::what).forEach(all::add);
    all.addAll(CautionWords.listFor(caseFile));
    all.addAll(
        List.of("Mast in its track", "Slowest inside the limits", "What to feel for", "waterline"));
    all.add(measures == Measures.METRIC ? "km/h" : "mph");
    return all;
  }

  private static void assertFonts(PDResources resources) throws Exception {
    int fonts = 0;
    for (COSName name : resources.getFontNames()) {
      PDFont font = resources.getFont(name);
      fonts++;
      assertThat(font.isEmbedded()).as(font.getName()).isTrue();
      assertThat(font.getName()).matches("[A-Z]{6}\\+SourceSans3-.*");
    }
    assertThat(fonts).isEqualTo(2);
  }

  private static void assertTagged(PDDocument document) {
    var catalog = document.getDocumentCatalog();
    assertThat(catalog.getMarkInfo().isMarked()).isTrue();
    assertThat(catalog.getLanguage()).isEqualTo("en");
    assertThat(catalog.getViewerPreferences().displayDocTitle()).isTrue();
    assertThat(document.getDocumentInformation().getTitle()).startsWith("Setup sheet: ");
    List<PDStructureElement> figures = new ArrayList<>();
    collect(catalog.getStructureTreeRoot(), "Figure", figures);
    assertThat(figures).hasSizeBetween(4, 5);
    assertThat(figures)
        .allSatisfy(f -> assertThat(f.getAlternateDescription()).hasSizeGreaterThan(20));
    List<PDStructureElement> heads = new ArrayList<>();
    collect(catalog.getStructureTreeRoot(), "H1", heads);
    assertThat(heads).hasSize(1);
  }

  private static void collect(PDStructureNode node, String type, List<PDStructureElement> found) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals(type)) {
          found.add(element);
        }
        collect(element, type, found);
      }
    }
  }

  @Test
  void aCharacterWithoutALetterIsReplacedAndSaid() throws Exception {
    CaseFile caseFile = Sheets.read(Sheets.named(Sheets.demo("light-carver"), "海 🏄 carve"));
    String text =
        Sheets.text(
            Sheets.print(
                caseFile, 29, Sheets.choice(Paper.A4, Measures.METRIC, "Rene\u0301e \u200b太郎")));
    assertThat(text)
        .contains("□□carve")
        .contains("Renée")
        .contains("□standsforacharacterthatthisprinthasnoletterfor.");
    assertThat(Sheets.text(sheetFor("Ana"))).doesNotContain("□").contains("Rider:Ana");
  }

  /** Who copies the sheet's text or has it read aloud gets the letters that stand there. */
  @Test
  void lettersThatRunTogetherStayLetters() throws Exception {
    String name = "after a lift, office fjord fl ff fi tt";
    CaseFile caseFile = Sheets.read(Sheets.named(Sheets.demo("light-carver"), name));
    byte[] pdf = Sheets.print(caseFile, 29, Sheets.choice(Paper.A4, Measures.METRIC, "Steffi"));
    assertThat(Sheets.text(pdf)).contains(Sheets.squeezed(name)).contains("Rider:Steffi");
  }

  @Test
  void withoutANameThereIsALineToWriteItOn() throws Exception {
    assertThat(Sheets.text(sheetFor(" "))).contains("Rider:____");
  }

  private static byte[] sheetFor(String rider) {
    return Sheets.print(
        Sheets.read(Sheets.demo("light-carver")),
        29,
        Sheets.choice(Paper.A4, Measures.METRIC, rider));
  }
}
