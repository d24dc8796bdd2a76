package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The inputs of a case, taken from the schema of case files: ranges and defaults from its rules,
 * labels and words from its titles and from keys of its own that begin with {@code x-}. Immutable.
 */
public final class CaseFields {
  private static final FieldNode ROOT = FieldTree.of();
  private static final List<CaseField> ALL = all(ROOT);
  private static final Map<String, Integer> ORDER = order();

  private CaseFields() {}

  /** Every single input, in the schema's order; those of lists are not among them. */
  public static List<CaseField> list() {
    return ALL.stream().filter(field -> !field.repeated()).toList();
  }

  /** The inputs of one entry of a list, such as a wing's measured stations. */
  public static List<CaseField> listRepeated() {
    return ALL.stream().filter(CaseField::repeated).toList();
  }

  /**
   * The input at a path of a draft.
   *
   * @param path such as {@code rider.mass_kg} or {@code setup.front_wing.stations.2.chord_mm}
   * @return the input; its own path has a {@code *} for the place in a list
   */
  public static Optional<CaseField> find(String path) {
    return ROOT.findPath(path).flatMap(FieldNode::field);
  }

  static FieldNode root() {
    return ROOT;
  }

  /** Where a field stands in the order to show; behind all others where there is none. */
  static int order(String path) {
    return find(path).map(field -> ORDER.get(field.path())).orElse(ALL.size());
  }

  private static List<CaseField> all(FieldNode node) {
    List<CaseField> fields = new ArrayList<>();
    node.field().ifPresent(fields::add);
    node.children().values().forEach(child -> fields.addAll(all(child)));
    node.element().ifPresent(element -> fields.addAll(all(element)));
    return List.copyOf(fields);
  }

  private static Map<String, Integer> order() {
    Map<String, Integer> order = new HashMap<>();
    for (CaseField field : ALL) {
      order.put(field.path(), order.size());
    }
    return order;
  }
}
