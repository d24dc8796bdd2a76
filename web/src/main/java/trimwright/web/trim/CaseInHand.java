package trimwright.web.trim;

import java.util.List;

/**
 * The case that the page is about.
 *
 * @param demoId name of the demo case, empty for one that was handed in
 * @param title name of the case
 * @param story what it is about, may be empty
 * @param text the case file as handed in
 * @param facts the figures that a person wants to see again
 */
public record CaseInHand(String demoId, String title, String story, String text, List<Fact> facts) {
  /** Copies the list. */
  public CaseInHand {
    facts = List.copyOf(facts);
  }

  /**
   * Whether it is one of the demo cases, which need nothing but their name in an address.
   *
   * @return false for a case that was handed in
   */
  public boolean isDemo() {
    return !demoId.isEmpty();
  }

  /**
   * One figure of a case.
   *
   * @param name what it is
   * @param value number or word
   * @param unit its unit, may be empty
   */
  public record Fact(String name, String value, String unit) {}
}
