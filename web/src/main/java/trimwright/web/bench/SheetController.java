package trimwright.web.bench;

import java.time.LocalDate;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trimwright.desk.RangeProblem;
import trimwright.desk.SpeedRange;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.sheet.Paper;
import trimwright.sheet.SetupSheet;
import trimwright.sheet.SheetChoice;

/** The sheet that a rider takes home. A form asks for it, so that a browser shows it by itself. */
@Controller
class SheetController {
  private static final int LONGEST_NAME = 80;

  /**
   * In place of the pages' policy, which allows nothing to be embedded: a browser shows a PDF by
   * embedding its own viewer into the answer. There is nothing else in it that could load or run.
   */
  private static final String POLICY = "frame-ancestors 'none'";

  private final BenchAnswers answers;

  SheetController(BenchAnswers answers) {
    this.answers = answers;
  }

  /** The sheet of what stands in the fields, at a speed. */
  @PostMapping(path = "/bench/sheet", consumes = MediaType.APPLICATION_FORM_URLENCODED_VALUE)
  ResponseEntity<byte[]> sheet(
      @RequestParam(name = "fields", defaultValue = "") String fields,
      @RequestParam(name = "speed_kmh", defaultValue = "") String speed,
      @RequestParam(name = "measures", defaultValue = "") String measures,
      @RequestParam(name = "paper", defaultValue = "A4") String paper,
      @RequestParam(name = "rider", defaultValue = "") String rider) {
    Measures shown = BenchRequest.measures(measures);
    CaseFile caseFile =
        BenchRequest.findFields(fields)
            .flatMap(texts -> CaseDraft.of(texts).read(shown, SectionFiles.NONE).caseFile())
            .orElseThrow(NoCase::new);
    SheetChoice choice = new SheetChoice(paper(paper), shown, name(rider), LocalDate.now());
    double ridden = speed(speed);
    byte[] pdf = answers.inTurn(() -> SetupSheet.pdf(answers.onSections(caseFile), ridden, choice));
    String file = CaseController.fileName(caseFile.name()) + "-sheet.pdf";
    return ResponseEntity.ok()
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.inline().filename(file).build().toString())
        .header("Content-Security-Policy", POLICY)
        .contentType(MediaType.APPLICATION_PDF)
        .body(pdf);
  }

  private static Paper paper(String code) {
    return code.equals("LETTER") ? Paper.LETTER : Paper.A4;
  }

  private static double speed(String text) {
    try {
      return SpeedRange.oneKmh(Double.parseDouble(text));
    } catch (NumberFormatException | RangeProblem e) {
      throw new BadQuestion();
    }
  }

  /** On one line, and no longer than the paper has room for. */
  private static String name(String rider) {
    String line = rider.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    int letters = Math.min(LONGEST_NAME, line.codePointCount(0, line.length()));
    return line.substring(0, line.offsetByCodePoints(0, letters));
  }
}
