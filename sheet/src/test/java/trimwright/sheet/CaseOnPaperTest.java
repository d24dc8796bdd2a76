package trimwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.exchange.read.CaseCode;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;

/** The code on the printed page carries the case, and nobody's name. */
class CaseOnPaperTest {
  /** Coarser than any printer: what is read here is read from paper [dots per inch]. */
  private static final float COARSE = 200;

  private static final String RIDER = "Quirina Example";

  @ParameterizedTest
  @ValueSource(strings = {"heavy-beginner", "light-carver", "cold-salt-water", "nose-up-mismatch"})
  void thePageGivesTheCaseBack(String id) throws Exception {
    String text = Sheets.demo(id);
    CaseFile caseFile = Sheets.read(text);
    String carried =
        decoded(Sheets.print(caseFile, 25, Sheets.choice(Paper.A4, Measures.METRIC, RIDER)));

    CaseFile nameless = Sheets.read(text.replaceFirst("(?m)^name:.*\\n", ""));
    CaseFile back = Sheets.read(carried);
    assertThat(back.digest()).isEqualTo(nameless.digest());
    assertThat(back.rideCase().rider()).isEqualTo(caseFile.rideCase().rider());
    assertThat(carried).doesNotContainIgnoringCase("quirina").doesNotContain(caseFile.name());
  }

  @Test
  void modulesAreLargeEnoughForACamera() {
    for (String id : new String[] {"heavy-beginner", "light-carver"}) {
      String text = CaseCode.of(Sheets.read(Sheets.demo(id))).text().orElseThrow();
      Optional<CodePicture> code = CodePicture.find(text, "code", 46.6);
      assertThat(code).isPresent();
      assertThat(code.get().module()).isGreaterThanOrEqualTo(CodePicture.LEAST_MODULE);
      assertThat(code.get().size()).isLessThanOrEqualTo(46.6);
    }
    assertThat(CodePicture.find("x".repeat(CaseCode.MOST_BYTES), "code", 46.6)).isPresent();
    assertThat(CodePicture.find("x".repeat(3000), "code", 46.6)).isEmpty();
  }

  @Test
  void aShortTextHasTheMostCorrection() {
    assertThat(CodePicture.find("short", "code", 46.6).orElseThrow().module())
        .isGreaterThan(CodePicture.LEAST_MODULE);
  }

  @Test
  void aCaseTooLongForPaperSaysSo() throws Exception {
    StringBuilder stations = new StringBuilder("    stations:\n");
    for (int i = 0; i <= 30; i++) {
      stations.append(
          String.format(
              java.util.Locale.ROOT,
              "      - {eta: %.4f, chord_mm: %.2f, quarter_chord_mm: %.2f}\n",
              i / 30.0,
              155 - 3.1 * i,
              -1.37 * i));
    }
    String text =
        Sheets.demo("light-carver")
            .replaceFirst(
                "(?s)    area_cm2: 950\\n    span_mm: 800\\n.*?(    section: naca2410\\n)"
                    + "    setting_deg: 0.0\\n    twist_tip_deg: -1.0\\n",
                "    span_mm: 800\n" + stations + "$1");
    CaseFile caseFile = Sheets.read(text);
    String printed =
        Sheets.text(
            Sheets.print(caseFile, 29, Sheets.choice(Paper.LETTER, Measures.METRIC, RIDER)));
    assertThat(printed).contains(Sheets.squeezed(CaseCode.of(caseFile).whyNot().orElseThrow()));
  }

  private static String decoded(byte[] pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, COARSE);
      int[] pixels = page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
      BinaryBitmap bits =
          new BinaryBitmap(
              new HybridBinarizer(
                  new RGBLuminanceSource(page.getWidth(), page.getHeight(), pixels)));
      return new QRCodeReader()
          .decode(bits, Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
          .getText();
    }
  }
}
