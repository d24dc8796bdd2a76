package trimwright.exchange.read;

import java.util.List;
import java.util.Objects;
import trimwright.kernel.section.OutlineRepair;
import trimwright.kernel.section.Section;

/**
 * A section from a coordinates file, and what was put right in the file.
 *
 * @param section the section
 * @param joined whether the file listed the two surfaces apart and they were joined
 * @param repairs what was put right in the points
 */
public record ReadSection(Section section, boolean joined, List<OutlineRepair> repairs) {
  /** Copies the list. */
  public ReadSection {
    Objects.requireNonNull(section, "section");
    repairs = List.copyOf(repairs);
  }
}
