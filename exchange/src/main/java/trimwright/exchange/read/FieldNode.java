package trimwright.exchange.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A place in the tree of all that a case may hold: a field, a group of places, or a list of groups.
 * A wing's section is both a field and a group.
 *
 * @param title what people call it, in the middle of a sentence
 * @param required whether its group needs it
 * @param field what is written here, where something may be
 * @param children the places below a group
 * @param element the group that a list holds
 */
record FieldNode(
    String title,
    boolean required,
    Optional<CaseField> field,
    Map<String, FieldNode> children,
    Optional<FieldNode> element) {
  private static final Pattern DOT = Pattern.compile("\\.");

  /** More entries than any list may have, so that hostile numbers stay small. */
  private static final Pattern INDEX = Pattern.compile("0|[1-9][0-9]{0,2}");

  FieldNode {
    children = Collections.unmodifiableMap(new LinkedHashMap<>(children));
  }

  /** The place below a step of a path: a key, or the place in a list. */
  Optional<FieldNode> find(String step) {
    return element.isPresent()
        ? element.filter(e -> INDEX.matcher(step).matches())
        : Optional.ofNullable(children.get(step));
  }

  /** The place at a path of keys and list places joined by dots. */
  Optional<FieldNode> findPath(String path) {
    Optional<FieldNode> at = Optional.of(this);
    for (String step : DOT.split(path, -1)) {
      at = at.flatMap(node -> node.find(step));
    }
    return at;
  }
}
