package trimwright.web.bench;

import java.util.Arrays;
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
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.DraftReading;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.write.BenchPageWriter;
import trimwright.exchange.write.BenchWriter;
import trimwright.exchange.write.Codes;
import trimwright.exchange.write.SectionState;
import trimwright.kernel.play.Play;
import trimwright.web.page.Theme;

/** The page, and the answers to its sliders. */
@Controller
class BenchController {
  /** Faster nobody rides. */
  private static final double FASTEST_KMH = 200;

  private final BenchAnswers answers;
  private final BenchCases cases;

  BenchController(BenchAnswers answers, BenchCases cases) {
    this.answers = answers;
    this.cases = cases;
  }

  /** The page with a case open; without a name it is the one saved last, or a made-up one. */
  @GetMapping("/")
  ModelAndView page(
      @RequestParam(name = "case", defaultValue = "") String id,
      @RequestParam(name = "measures", defaultValue = "") String measures,
      @RequestParam(name = "theme", defaultValue = "") String theme) {
    BenchCases.Opened open = id.isEmpty() ? cases.first() : cases.get(id);
    Measures shown = BenchRequest.measures(measures);
    String data =
        BenchPageWriter.json(
            open.item(),
            CaseDraft.fields(open.caseFile()),
            cases.items(),
            answers.first(shown, open.caseFile()));
    answers.noteOpened(open.caseFile());
    String title = open.item().title() + ": Trimwright";
    return new ModelAndView("bench/page", "page", new BenchPage(Theme.orLight(theme), title, data));
  }

  /** The whole curve of what stands in the fields, or what is wrong with them. */
  @PostMapping(path = "/bench/curve", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> curve(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    DraftReading reading = Drafts.read(request);
    Optional<CaseFile> caseFile = reading.caseFile();
    String answer =
        caseFile.isPresent()
            ? accepted(request.sequence(), request.measures(), caseFile.get())
            : BenchWriter.refused(request.sequence(), reading.problems());
    return Utf8.json(HttpStatus.OK, answer);
  }

  /** How sure the numbers of the curve are: asked for when the sliders rest. */
  @PostMapping(path = "/bench/bands", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> bands(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    DraftReading reading = Drafts.read(request);
    Optional<CaseFile> caseFile = reading.caseFile();
    String answer =
        caseFile.isPresent()
            ? answers.banded(
                request.sequence(), request.measures(), caseFile.get(), Drafts.pinned(request))
            : BenchWriter.refused(request.sequence(), reading.problems());
    return Utf8.json(HttpStatus.OK, answer);
  }

  /** What the case can do before something gives way: asked for when the sliders rest. */
  @PostMapping(path = "/bench/envelope", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> envelope(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    DraftReading reading = Drafts.read(request);
    String answer =
        reading
            .caseFile()
            .map(c -> answers.envelope(request.sequence(), request.measures(), c))
            .orElseGet(() -> BenchWriter.refused(request.sequence(), reading.problems()));
    return Utf8.json(HttpStatus.OK, answer);
  }

  /** One thing that can happen on a ride: asked for while the page shows it. */
  @PostMapping(path = "/bench/motion", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> motion(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    Play play =
        request.text("play").flatMap(BenchController::findPlay).orElseThrow(BadQuestion::new);
    double kmh = request.number("speed_kmh").orElseThrow(BadQuestion::new);
    if (!(kmh > 0 && kmh <= FASTEST_KMH)) {
      throw new BadQuestion();
    }
    DraftReading reading = Drafts.read(request);
    String answer =
        reading
            .caseFile()
            .map(
                c ->
                    answers.motion(
                        request.sequence(),
                        request.measures(),
                        c,
                        play,
                        Unit.KILOMETRE_PER_HOUR.toSi(kmh)))
            .orElseGet(() -> BenchWriter.refused(request.sequence(), reading.problems()));
    return Utf8.json(HttpStatus.OK, answer);
  }

  private static Optional<Play> findPlay(String code) {
    return Arrays.stream(Play.values()).filter(p -> Codes.of(p).equals(code)).findFirst();
  }

  /** How far the polars are of the sections of what stands in the fields. */
  @PostMapping(path = "/bench/sections", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> sections(@RequestBody byte[] body) {
    BenchRequest request = BenchRequest.find(body).orElseThrow(BadQuestion::new);
    SectionState state =
        Drafts.read(request).caseFile().map(answers::sections).orElse(SectionState.READY);
    return Utf8.json(HttpStatus.OK, state.json());
  }

  private String accepted(long sequence, Measures measures, CaseFile caseFile) {
    return sequence == Practice.SEQUENCE
        ? answers.unasked(sequence, measures, caseFile)
        : answers.accepted(sequence, measures, caseFile);
  }
}
