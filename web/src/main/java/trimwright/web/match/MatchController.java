package trimwright.web.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import trimwright.desk.MatchQuestion;
import trimwright.desk.RiderAsked;
import trimwright.exchange.demo.DemoStock;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.write.MatchPageWriter;
import trimwright.exchange.write.ShelfWriter;
import trimwright.web.bench.BadQuestion;
import trimwright.web.bench.BenchCases;
import trimwright.web.bench.HandedIn;
import trimwright.web.bench.Utf8;
import trimwright.web.page.Theme;

/** The page of the match, and what its scripts ask. */
@Controller
class MatchController {
  private static final String JSON = MediaType.APPLICATION_JSON_VALUE;

  /** A name that a browser gives itself is not longer. */
  private static final int LONGEST_NAME = 64;

  private static final String BUSY =
      "The shop is busy: others are looking through stocks, and more wait. Try again in a minute or"
          + " two.";
  private static final String GONE =
      "This look through the stock is over: nobody asked for it for a while, or the program was"
          + " started anew. Begin it again.";

  private final MatchJobs jobs;
  private final BenchCases cases;

  /** Made on first use: most visitors of the shop never look through a stock. */
  private static final class Shared {
    static final StockSearch SEARCH = new StockSearch();
    static final HandedIn<StockFile> DEMO = HandedIn.ofStock(DemoStock.text());
  }

  MatchController(MatchJobs jobs, BenchCases cases) {
    this.jobs = jobs;
    this.cases = cases;
  }

  /** The page with a rider chosen; without a name it is the case that the Bench would open with. */
  @GetMapping("/match")
  ModelAndView page(
      @RequestParam(name = "case", defaultValue = "") String id,
      @RequestParam(name = "theme", defaultValue = "") String theme) {
    BenchCases.Opened open = id.isEmpty() ? cases.first() : cases.get(id);
    String data = MatchPageWriter.page(open.item().id(), cases.items(), KnownWater.items());
    return new ModelAndView("match/page", "page", new MatchPage(Theme.orLight(theme), data));
  }

  /** A rider, and what is usually wished for them. */
  @PostMapping(path = "/match/rider", consumes = JSON)
  ResponseEntity<byte[]> rider(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    BenchCases.Opened open = open(request);
    return Utf8.json(
        HttpStatus.OK,
        MatchPageWriter.rider(
            open.item(),
            open.caseFile(),
            RiderAsked.kind(open.caseFile()),
            MatchQuestion.USUAL_WEIGHT_SPREAD,
            request.measures()));
  }

  private BenchCases.Opened open(BenchRequest request) {
    return cases.get(request.text("case").orElseThrow(BadQuestion::new));
  }

  /** A stock, the made-up one where none is handed in; or every problem with its file. */
  @PostMapping(path = "/match/stock", consumes = JSON)
  ResponseEntity<byte[]> stock(@RequestBody byte[] body) {
    HandedIn<StockFile> handed = stock(BenchRequest.find(body).orElseThrow(BadQuestion::new));
    return handed
        .value()
        .map(file -> Utf8.json(HttpStatus.OK, MatchPageWriter.stock(file)))
        .orElseGet(
            () ->
                Utf8.json(
                    handed.tooLarge()
                        ? HttpStatus.CONTENT_TOO_LARGE
                        : HttpStatus.UNPROCESSABLE_CONTENT,
                    ShelfWriter.notOpened(handed.problems())));
  }

  private static HandedIn<StockFile> stock(BenchRequest request) {
    return request.text("stock").map(HandedIn::ofStock).orElse(Shared.DEMO);
  }

  /** Begins a look through a stock. */
  @PostMapping(path = "/match/start", consumes = JSON)
  ResponseEntity<byte[]> start(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    String visitor =
        request
            .text("visitor")
            .filter(name -> !name.isBlank() && name.length() <= LONGEST_NAME)
            .orElseThrow(BadQuestion::new);
    HandedIn<StockFile> stock = stock(request);
    List<String> problems = new ArrayList<>();
    stock.problems().forEach(problem -> problems.add(problem.message()));
    Optional<MatchAsked> asked =
        stock
            .value()
            .flatMap(file -> MatchAsked.of(request, open(request).caseFile(), file, problems));
    if (asked.isEmpty()) {
      return Utf8.json(HttpStatus.UNPROCESSABLE_CONTENT, MatchPageWriter.refused(problems));
    }
    return jobs.start(visitor, watch -> Shared.SEARCH.run(asked.get(), watch))
        .map(job -> Utf8.json(HttpStatus.OK, MatchPageWriter.begun(job)))
        .orElseGet(
            () ->
                Utf8.json(HttpStatus.SERVICE_UNAVAILABLE, MatchPageWriter.refused(List.of(BUSY))));
  }

  /** How far one is: asked while the page waits, for what nobody asks for ends. */
  @PostMapping(path = "/match/state", consumes = JSON)
  ResponseEntity<byte[]> state(@RequestBody byte[] body) {
    String state =
        jobs.find(job(body))
            .map(
                job ->
                    MatchPageWriter.state(
                        code(job.state()), job.words(jobs.ahead(job)), job.share()))
            .orElseGet(() -> MatchPageWriter.state("gone", GONE, 0));
    return Utf8.json(HttpStatus.OK, state);
  }

  /** Ends one. */
  @PostMapping(path = "/match/stop", consumes = JSON)
  ResponseEntity<byte[]> stop(@RequestBody byte[] body) {
    jobs.stop(job(body));
    return Utf8.json(
        HttpStatus.OK, MatchPageWriter.state(code(MatchJob.State.STOPPED), "Stopped.", 0));
  }

  /** What one has found. */
  @PostMapping(path = "/match/result", consumes = JSON)
  ResponseEntity<byte[]> result(@RequestBody byte[] body) {
    return jobs.find(job(body))
        .flatMap(MatchJob::findAnswer)
        .map(found -> Utf8.json(HttpStatus.OK, found))
        .orElseGet(() -> Utf8.json(HttpStatus.NOT_FOUND, MatchPageWriter.refused(List.of(GONE))));
  }

  private static String code(MatchJob.State state) {
    return switch (state) {
      case WAITING -> "waiting";
      case RUNNING -> "running";
      case DONE -> "done";
      case STOPPED -> "stopped";
      case FAILED -> "failed";
    };
  }

  private static String job(byte[] body) {
    return BenchRequest.find(body).flatMap(r -> r.text("job")).orElseThrow(BadQuestion::new);
  }
}
