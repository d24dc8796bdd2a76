package trimwright.exchange.read;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.StringNode;
import trimwright.exchange.read.internal.Words;

/**
 * The canonical form of a document: defaults filled in, keys sorted, numbers without needless
 * digits, coordinates files by their content. Equal cases have equal forms.
 */
final class Canonical {
  private Canonical() {}

  static String text(JsonNode filled, SectionChoice sections) {
    StringBuilder out = new StringBuilder();
    write(filled, sections, out);
    return out.toString();
  }

  private static void write(JsonNode node, SectionChoice sections, StringBuilder out) {
    if (node.isObject()) {
      out.append('{');
      Map<String, JsonNode> sorted = new TreeMap<>();
      node.properties().forEach(property -> sorted.put(property.getKey(), property.getValue()));
      String separator = "";
      for (Map.Entry<String, JsonNode> property : sorted.entrySet()) {
        out.append(separator).append(property.getKey()).append(':');
        Optional<String> section =
            property.getKey().equals("section")
                ? sections.findCanonical(property.getValue())
                : Optional.empty();
        write(section.<JsonNode>map(StringNode::new).orElse(property.getValue()), sections, out);
        separator = ",";
      }
      out.append('}');
    } else if (node.isArray()) {
      out.append('[');
      node.forEach(
          element -> {
            write(element, sections, out);
            out.append(';');
          });
      out.append(']');
    } else if (node.isNumber()) {
      out.append(Words.number(node.doubleValue()));
    } else {
      out.append(node);
    }
  }
}
