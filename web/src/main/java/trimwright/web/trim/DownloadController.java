package trimwright.web.trim;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.write.CurveWriter;

/**
 * What can be taken along from the first page. The same address answers a demo case and a form with
 * a case's text.
 */
@Controller
class DownloadController {
  private static final String SVG = "image/svg+xml";
  private final TrimAnswers answers;
  private final DemoShelf shelf;

  DownloadController(TrimAnswers answers, DemoShelf shelf) {
    this.answers = answers;
    this.shelf = shelf;
  }

  @RequestMapping(
      path = "/{file:case\\.yaml|side-view\\.svg|curves\\.svg|curve\\.csv|curve\\.json}",
      method = {RequestMethod.GET, RequestMethod.POST})
  ResponseEntity<byte[]> file(
      @PathVariable("file") String file,
      @RequestParam(name = "case", defaultValue = "") String id,
      @RequestParam(name = "text", defaultValue = "") String text,
      @RequestParam(name = "speed", defaultValue = "") String speed) {
    HandedIn handed =
        id.isEmpty() ? HandedIn.ofText("", text) : HandedIn.ofText(id, shelf.getDemo(id).text());
    SpeedField field = SpeedField.read(speed, 0);
    if (handed.findRefusal().isPresent() || field.speedKmh().isEmpty()) {
      return ResponseEntity.badRequest()
          .contentType(MediaType.TEXT_PLAIN)
          .body(
              "Nothing to save: go back and choose a case and a speed first."
                  .getBytes(StandardCharsets.UTF_8));
    }
    CaseFile caseFile = handed.getCase();
    double kmh = field.speedKmh().getAsDouble();
    return switch (file) {
      case "case.yaml" -> answer(caseFile, ".yaml", "application/yaml", handed.text());
      case "side-view.svg" -> sideView(caseFile, kmh);
      case "curves.svg" -> answer(caseFile, "-curves.svg", SVG, curves(caseFile, kmh));
      case "curve.csv" ->
          answer(caseFile, ".csv", "text/csv", CurveWriter.csv(answers.curve(caseFile, kmh)));
      default ->
          answer(
              caseFile,
              ".json",
              "application/json",
              CurveWriter.json(caseFile, answers.curve(caseFile, kmh)));
    };
  }

  private ResponseEntity<byte[]> sideView(CaseFile caseFile, double kmh) {
    return answers
        .findPoint(caseFile, kmh)
        .map(point -> PagePictures.savedSideView(caseFile, point))
        .map(svg -> answer(caseFile, "-side-view.svg", SVG, svg))
        .orElseThrow(NothingToDraw::new);
  }

  private String curves(CaseFile caseFile, double kmh) {
    return PagePictures.savedCurves(
        caseFile, answers.curve(caseFile, kmh), Unit.KILOMETRE_PER_HOUR.toSi(kmh));
  }

  private static ResponseEntity<byte[]> answer(
      CaseFile caseFile, String end, String type, String content) {
    ContentDisposition disposition =
        ContentDisposition.attachment().filename(fileName(caseFile.name()) + end).build();
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_DISPOSITION, disposition.toString())
        .contentType(new MediaType(MediaType.parseMediaType(type), StandardCharsets.UTF_8))
        .body(content.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Letters, digits and hyphens only, so that no name of a case can mean anything to a file system.
   */
  private static String fileName(String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return plain.isEmpty() ? "case" : plain;
  }
}
