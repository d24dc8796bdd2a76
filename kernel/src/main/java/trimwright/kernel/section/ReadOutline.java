package trimwright.kernel.section;

import java.util.List;
import java.util.Objects;

/**
 * A section from an outline, and what was put right in the outline's points.
 *
 * @param section the section
 * @param repairs in the order in which they were made; empty where nothing was wrong
 */
public record ReadOutline(Section section, List<OutlineRepair> repairs) {
  /** Copies the list. */
  public ReadOutline {
    Objects.requireNonNull(section, "section");
    repairs = List.copyOf(repairs);
  }
}
