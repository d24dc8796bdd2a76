package trimwright.web.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import trimwright.desk.CaseShelf;
import trimwright.desk.ShelfException;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseWriter;
import trimwright.exchange.read.DraftReading;
import trimwright.exchange.read.FieldProblem;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchWriter;
import trimwright.exchange.write.CurveWriter;
import trimwright.exchange.write.ShelfWriter;
import trimwright.exchange.write.ShelfWriter.Item;
import trimwright.exchange.write.ShelfWriter.LineProblem;

/** Cases as wholes: opened, saved, taken along as files. */
@Controller
class CaseController {
  private static final Logger LOG = LoggerFactory.getLogger(CaseController.class);
  private static final String JSON = MediaType.APPLICATION_JSON_VALUE;
  private static final String NAME = "name";

  private final BenchAnswers answers;
  private final BenchCases cases;
  private final CaseShelf shelf;

  CaseController(BenchAnswers answers, BenchCases cases, CaseShelf shelf) {
    this.answers = answers;
    this.cases = cases;
    this.shelf = shelf;
  }

  /** What can be opened. */
  @GetMapping("/bench/shelf")
  ResponseEntity<byte[]> list() {
    return Utf8.json(HttpStatus.OK, ShelfWriter.shelf(cases.items()));
  }

  /** A case of the shelf, as fields; or every problem with its file. */
  @GetMapping("/bench/case")
  ResponseEntity<byte[]> get(@RequestParam(name = "id", defaultValue = "") String id) {
    List<Problem> problems = cases.problems(id);
    if (!problems.isEmpty()) {
      return Utf8.json(
          HttpStatus.UNPROCESSABLE_CONTENT,
          ShelfWriter.notOpened(
              problems.stream().map(p -> new LineProblem(p.line(), "", p.message())).toList()));
    }
    BenchCases.Opened opened = cases.get(id);
    return Utf8.json(
        HttpStatus.OK, ShelfWriter.opened(opened.item(), CaseDraft.fields(opened.caseFile())));
  }

  /** The text of a case file, as fields; or every problem with the line it stands on. */
  @PostMapping(path = "/bench/open", consumes = JSON)
  ResponseEntity<byte[]> open(@RequestBody byte[] body) {
    String text =
        BenchRequest.find(body).flatMap(r -> r.text("text")).orElseThrow(BadQuestion::new);
    HandedIn<CaseFile> handed = HandedIn.ofCase(text);
    if (handed.value().isEmpty()) {
      HttpStatus status =
          handed.tooLarge() ? HttpStatus.CONTENT_TOO_LARGE : HttpStatus.UNPROCESSABLE_CONTENT;
      return Utf8.json(status, ShelfWriter.notOpened(handed.problems()));
    }
    CaseFile caseFile = handed.value().get();
    Item item = new Item("", caseFile.name(), "", "file");
    return Utf8.json(HttpStatus.OK, ShelfWriter.opened(item, CaseDraft.fields(caseFile)));
  }

  /** Puts what stands in the fields onto the shelf. */
  @PostMapping(path = "/bench/save", consumes = JSON)
  ResponseEntity<byte[]> save(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    String name = request.text(NAME).map(String::strip).orElseThrow(BadQuestion::new);
    if (name.isEmpty()) {
      return notSaved(HttpStatus.UNPROCESSABLE_CONTENT, "Give the case a name first.");
    }
    DraftReading reading = Drafts.named(request, name);
    if (reading.caseFile().isEmpty()) {
      return Utf8.json(
          HttpStatus.UNPROCESSABLE_CONTENT, ShelfWriter.notSaved(false, reading.problems()));
    }
    CaseFile caseFile = reading.caseFile().get();
    CaseShelf.Outcome outcome = shelf.save(caseFile, request.flag("replace"));
    if (outcome instanceof CaseShelf.Outcome.Saved saved) {
      return Utf8.json(
          HttpStatus.OK, ShelfWriter.saved(cases.saved(saved.id(), caseFile), cases.items()));
    }
    if (outcome instanceof CaseShelf.Outcome.Taken taken) {
      return taken(taken.id());
    }
    return notSaved(
        HttpStatus.UNPROCESSABLE_CONTENT, "Give the case a name with a letter or a digit in it.");
  }

  private ResponseEntity<byte[]> taken(String id) {
    String title = shelf.find(id).flatMap(Reading::findValue).map(CaseFile::name).orElse(id);
    String message =
        "\"" + title + "\" is on the shelf already. Choose another name, or replace that one.";
    return Utf8.json(
        HttpStatus.CONFLICT,
        ShelfWriter.notSaved(true, List.of(new FieldProblem(List.of(NAME), message))));
  }

  private static ResponseEntity<byte[]> notSaved(HttpStatus status, String message) {
    return Utf8.json(
        status, ShelfWriter.notSaved(false, List.of(new FieldProblem(List.of(NAME), message))));
  }

  /** The disk said no: the person gets the words, the log the cause. */
  @ExceptionHandler
  ResponseEntity<byte[]> shelfFailed(ShelfException failure) {
    LOG.error("the shelf failed", failure);
    return Utf8.json(
        HttpStatus.INTERNAL_SERVER_ERROR,
        ShelfWriter.notSaved(false, List.of(new FieldProblem(List.of(), failure.getMessage()))));
  }

  /** What stands in the fields as a file to take along: the case, or its curve. */
  @PostMapping(path = "/bench/export", consumes = JSON)
  ResponseEntity<byte[]> export(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    DraftReading reading = Drafts.read(request);
    Optional<CaseFile> found = reading.caseFile();
    if (found.isEmpty()) {
      return Utf8.json(
          HttpStatus.UNPROCESSABLE_CONTENT,
          BenchWriter.refused(request.sequence(), reading.problems()));
    }
    CaseFile caseFile = found.get();
    CaseFile layered = answers.onSections(caseFile);
    Measures measures = request.measures();
    return switch (request.text("kind").orElse("yaml")) {
      case "yaml" -> file(caseFile, ".yaml", "application/yaml", CaseWriter.yaml(caseFile));
      case "csv" ->
          file(
              caseFile,
              "-curve.csv",
              "text/csv",
              CurveWriter.csv(answers.bands(measures, layered)));
      case "json" ->
          file(
              caseFile,
              "-curve.json",
              JSON,
              CurveWriter.json(layered, answers.bands(measures, layered)));
      default -> throw new BadQuestion();
    };
  }

  private static ResponseEntity<byte[]> file(
      CaseFile caseFile, String ending, String type, String content) {
    ContentDisposition disposition =
        ContentDisposition.attachment().filename(fileName(caseFile.name()) + ending).build();
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_DISPOSITION, disposition.toString())
        .header(HttpHeaders.CONTENT_TYPE, type + ";charset=UTF-8")
        .body(Utf8.bytes(content));
  }

  /** Letters, digits and hyphens only, so that no name can mean anything to a file system. */
  static String fileName(String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    return plain.isEmpty() ? "case" : plain;
  }
}
