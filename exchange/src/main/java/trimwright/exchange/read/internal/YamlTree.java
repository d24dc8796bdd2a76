package trimwright.exchange.read.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tools.jackson.databind.node.ObjectNode;

/**
 * A YAML text as a tree, with the line of every key.
 *
 * @param root the top group; empty where the text could not be read at all
 * @param lines line of each path, counted from 1
 * @param written each plain or quoted value as it stands in the text
 * @param problems what was found wrong while reading; values they speak of stand in the tree as
 *     null
 */
public record YamlTree(
    Optional<ObjectNode> root,
    Map<String, Integer> lines,
    Map<String, String> written,
    List<Finding> problems) {
  /** Copies the collections. */
  public YamlTree {
    lines = Map.copyOf(lines);
    written = Map.copyOf(written);
    problems = List.copyOf(problems);
  }

  /**
   * The line of a path, or of the nearest group above it.
   *
   * @param path such as {@code setup.mast.length_mm}
   * @return the line, counted from 1
   */
  public OptionalInt findLine(String path) {
    for (String at = path; !at.isEmpty(); at = Paths.parent(at)) {
      Integer line = lines.get(at);
      if (line != null) {
        return OptionalInt.of(line);
      }
    }
    return OptionalInt.empty();
  }
}
