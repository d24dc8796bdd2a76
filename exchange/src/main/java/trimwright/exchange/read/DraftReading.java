package trimwright.exchange.read;

import java.util.List;
import java.util.Optional;

/**
 * What the fields of a draft give: a case, or everything that is wrong with them.
 *
 * @param caseFile the case, where the draft is one
 * @param problems what is wrong; empty where the draft is a case
 */
public record DraftReading(Optional<CaseFile> caseFile, List<FieldProblem> problems) {
  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if there are both a case and problems, or neither
   */
  public DraftReading {
    problems = List.copyOf(problems);
    if (caseFile.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("a draft is a case or has problems");
    }
  }
}
