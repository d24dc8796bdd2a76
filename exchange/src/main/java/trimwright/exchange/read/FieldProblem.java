package trimwright.exchange.read;

import java.util.List;

/**
 * Something wrong with what stands in the fields of a draft.
 *
 * @param paths every field concerned, the one to look at first in front; empty where it is the case
 *     as a whole
 * @param message a whole sentence in labels and shown measures, without key paths
 */
public record FieldProblem(List<String> paths, String message) {
  /** Copies the list. */
  public FieldProblem {
    paths = List.copyOf(paths);
  }
}
