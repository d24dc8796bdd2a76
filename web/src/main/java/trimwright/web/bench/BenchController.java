package trimwright.web.bench;

import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.DraftReading;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchPageWriter;
import trimwright.exchange.write.BenchWriter;
import trimwright.web.page.Theme;

/** The page, and the answers to its sliders. */
@Controller
class BenchController {
  private final BenchAnswers answers;
  private final DemoShelf shelf;

  BenchController(BenchAnswers answers, DemoShelf shelf) {
    this.answers = answers;
    this.shelf = shelf;
  }

  /** The page with a case open; without a name it is the first on the shelf. */
  @GetMapping("/")
  ModelAndView page(
      @RequestParam(name = "case", defaultValue = "") String id,
      @RequestParam(name = "measures", defaultValue = "metric") String measures,
      @RequestParam(name = "theme", defaultValue = "") String theme) {
    CaseOnShelf open = id.isEmpty() ? shelf.list().get(0) : shelf.get(id);
    Measures shown = measures.equals("imperial") ? Measures.IMPERIAL : Measures.METRIC;
    String reply = answers.accepted(0, shown, open.caseFile());
    return new ModelAndView(
        "bench/page",
        "page",
        new BenchPage(
            Theme.orLight(theme), open.item().title() + ": Trimwright", data(open, reply)));
  }

  /** The whole curve of what stands in the fields, or what is wrong with them. */
  @PostMapping(path = "/bench/curve", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> curve(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    DraftReading reading =
        CaseDraft.of(request.fields()).read(request.measures(), SectionFiles.NONE);
    return json(
        reading
            .caseFile()
            .map(c -> answers.accepted(request.sequence(), request.measures(), c))
            .orElseGet(() -> BenchWriter.refused(request.sequence(), reading.problems())));
  }

  private String data(CaseOnShelf open, String reply) {
    return BenchPageWriter.json(
        open.item(),
        CaseDraft.fields(open.caseFile()),
        shelf.list().stream().map(CaseOnShelf::item).toList(),
        reply);
  }

  private static ResponseEntity<byte[]> json(String text) {
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_JSON)
        .body(text.getBytes(StandardCharsets.UTF_8));
  }
}
