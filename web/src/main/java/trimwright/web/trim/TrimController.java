package trimwright.web.trim;

import java.util.Optional;
import java.util.OptionalDouble;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.Shown;
import trimwright.web.page.Theme;

/** The first page: by address for a demo case, by form for a case that was handed in. */
@Controller
class TrimController {
  private static final String VIEW = "trim/page";
  private static final String FILE_NAME_UNKNOWN = "case handed in";
  private final TrimAnswers answers;
  private final DemoShelf shelf;

  TrimController(TrimAnswers answers, DemoShelf shelf) {
    this.answers = answers;
    this.shelf = shelf;
  }

  /** The start, or a demo case at a speed; without a speed it is the one the rider wishes for. */
  @GetMapping("/")
  ModelAndView show(
      @RequestParam(name = "case", defaultValue = "") String id,
      @RequestParam(name = "speed", required = false) String speed,
      @RequestParam(name = "step", defaultValue = "0") String step,
      @RequestParam(name = "theme", defaultValue = "") String theme) {
    Theme ground = Theme.orLight(theme);
    if (id.isEmpty()) {
      return page(HttpStatus.OK, start(ground, Optional.empty()));
    }
    DemoCase demo = shelf.getDemo(id);
    CaseFile caseFile = shelf.getCase(id);
    CaseInHand inHand =
        new CaseInHand(demo.id(), demo.title(), demo.story(), demo.text(), CaseFacts.of(caseFile));
    return result(ground, inHand, caseFile, speedField(caseFile, speed, step));
  }

  /** A file handed in, or the text of one that goes with the page. */
  @PostMapping("/")
  ModelAndView handIn(
      @RequestParam(name = "file", required = false) MultipartFile file,
      @RequestParam(name = "text", defaultValue = "") String text,
      @RequestParam(name = "name", defaultValue = "") String name,
      @RequestParam(name = "speed", required = false) String speed,
      @RequestParam(name = "step", defaultValue = "0") String step,
      @RequestParam(name = "theme", defaultValue = "") String theme) {
    Theme ground = Theme.orLight(theme);
    HandedIn handed =
        file != null
            ? HandedIn.ofFile(file)
            : HandedIn.ofText(name.isBlank() ? FILE_NAME_UNKNOWN : name, text);
    Optional<Refusal> refusal = handed.findRefusal();
    if (refusal.isPresent()) {
      return page(handed.status(), start(ground, refusal));
    }
    CaseFile caseFile = handed.getCase();
    CaseInHand inHand =
        new CaseInHand("", caseFile.name(), "", handed.text(), CaseFacts.of(caseFile));
    return result(ground, inHand, caseFile, speedField(caseFile, speed, step));
  }

  private ModelAndView result(Theme theme, CaseInHand inHand, CaseFile caseFile, SpeedField speed) {
    OptionalDouble kmh = speed.speedKmh();
    // A speed that cannot be read leaves the case on the page, answered at the rider's wish.
    double shown = kmh.orElse(wishedKmh(caseFile));
    Optional<Answer> answer = Optional.of(answers.at(caseFile, shown));
    TrimPage page =
        new TrimPage(
            theme,
            shelf.choices(inHand.demoId()),
            Optional.of(inHand),
            speed,
            Figures.shortest(shown),
            answer,
            Optional.empty());
    return page(kmh.isPresent() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT, page);
  }

  private static SpeedField speedField(CaseFile caseFile, String typed, String step) {
    return typed == null
        ? SpeedField.of(wishedKmh(caseFile))
        : SpeedField.read(typed, stepOf(step));
  }

  private static double wishedKmh(CaseFile caseFile) {
    return Shown.kmh(caseFile.rideCase().rider().wishedSpeed());
  }

  /** Only the page's own buttons send a step; anything else counts as none. */
  private static int stepOf(String step) {
    return switch (step) {
      case "-1" -> -1;
      case "1" -> 1;
      default -> 0;
    };
  }

  private TrimPage start(Theme theme, Optional<Refusal> refusal) {
    SpeedField none = new SpeedField("", "", OptionalDouble.empty());
    return new TrimPage(
        theme, shelf.choices(""), Optional.empty(), none, "", Optional.empty(), refusal);
  }

  private static ModelAndView page(HttpStatus status, TrimPage page) {
    ModelAndView view = new ModelAndView(VIEW, "page", page);
    view.setStatus(status);
    return view;
  }
}
