package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The digest of a stock: that of its content, whatever order the parts stand in. */
final class StockDigest {
  private StockDigest() {}

  /** SHA-256 of the canonical form, parts sorted by name and standards by theirs. */
  static String of(ObjectNode filled, SectionChoice sections) {
    ObjectNode sorted = filled.deepCopy();
    for (StockList list : StockList.values()) {
      if (sorted.get(list.key()) instanceof ArrayNode parts) {
        sort(parts, Comparator.comparing(part -> part.get("id").stringValue()));
        for (JsonNode part : parts) {
          part.get("mounts")
              .forEach(
                  names -> sort((ArrayNode) names, Comparator.comparing(JsonNode::stringValue)));
        }
      }
    }
    return Digest.of(Canonical.text(sorted, sections));
  }

  private static void sort(ArrayNode list, Comparator<JsonNode> order) {
    List<JsonNode> entries = new ArrayList<>();
    list.forEach(entries::add);
    entries.sort(order);
    list.removeAll();
    entries.forEach(list::add);
  }
}
