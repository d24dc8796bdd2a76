package trimwright.web.trim;

import java.util.List;
import java.util.Optional;
import trimwright.web.page.Theme;

/**
 * All that the first page shows.
 *
 * @param theme ground on which it is shown
 * @param demos the demo cases
 * @param inHand the case chosen, where one is
 * @param speed the field for the speed
 * @param shownSpeed the speed that the answer is for [km/h], empty where there is no answer
 * @param answer what came out, where a case and a speed are there
 * @param refusal a case that could not be read, where one was handed in
 */
public record TrimPage(
    Theme theme,
    List<DemoChoice> demos,
    Optional<CaseInHand> inHand,
    SpeedField speed,
    String shownSpeed,
    Optional<Answer> answer,
    Optional<Refusal> refusal) {
  /** Copies the list. */
  public TrimPage {
    demos = List.copyOf(demos);
  }

  /**
   * What a browser shows in its tab.
   *
   * @return title
   */
  public String title() {
    if (refusal.isPresent()) {
      return "Case not read: Trimwright";
    }
    return inHand.map(handed -> handed.title() + ": Trimwright").orElse("Trimwright");
  }

  /**
   * The form that the theme switch goes with where the browser runs no script.
   *
   * @return identifier of a form on the page
   */
  public String formId() {
    return inHand.isPresent() ? "speed-form" : "hand-in";
  }

  /**
   * Address of a download for a demo case.
   *
   * @param file name of the download
   * @return address with case and speed
   */
  public String download(String file) {
    String id = inHand.map(CaseInHand::demoId).orElse("");
    return "/" + file + "?case=" + id + "&speed=" + shownSpeed;
  }
}
