package trimwright.web.trim;

import java.util.List;

/**
 * A case that could not be read.
 *
 * @param name of the file
 * @param text what was handed in, kept so that it can be put right in place
 * @param problems all that is wrong with it
 */
public record Refusal(String name, String text, List<Item> problems) {
  /** Copies the list. */
  public Refusal {
    problems = List.copyOf(problems);
  }

  /**
   * One thing that is wrong.
   *
   * @param message a sentence that names key, value and permitted range
   * @param line number of the line, 0 where it belongs to none
   * @param lineText what stands on that line, may be empty
   */
  public record Item(String message, int line, String lineText) {}
}
