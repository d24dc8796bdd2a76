package trimwright.exchange.read;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.read.internal.YamlParser;

/**
 * A case as a text short enough for a square code on paper: a case file without the case's name,
 * without what counts anyway, and with one line for each group. Saved as a file it reads back to
 * the same computation. Nothing in it says who the rider is.
 *
 * @param text the case file; empty where it cannot be carried
 * @param whyNot what is in the way, as a whole sentence; empty where there is a text
 */
public record CaseCode(Optional<String> text, Optional<String> whyNot) {
  /**
   * Bytes that a code 5 cm wide carries with points that a telephone's camera can tell apart: 137
   * to a side, level M of ISO/IEC 18004 (version 30, figure from memory).
   */
  public static final int MOST_BYTES = 1_370;

  private static final Set<String> LEFT_OUT = Set.of("format", "name");

  /**
   * The code's text for a case.
   *
   * @param file a case that was read
   * @return the text, or why there is none
   * @throws IllegalArgumentException if the file's text is not one that the reader accepts
   */
  public static CaseCode of(CaseFile file) {
    ObjectNode document =
        YamlParser.parse(file.text())
            .root()
            .orElseThrow(
                () -> new IllegalArgumentException("the case's text is no longer a case file"));
    if (namesFile(document)) {
      return refused(
          "The code leaves this case out: a section of it comes from a coordinates file, which no"
              + " code can carry. Hand over the case file and that file instead.");
    }
    String text = compact(document);
    int bytes = text.getBytes(StandardCharsets.UTF_8).length;
    return bytes <= MOST_BYTES
        ? new CaseCode(Optional.of(text), Optional.empty())
        : refused(
            "The code leaves this case out: it takes "
                + bytes
                + " characters, and a code that a camera can read holds "
                + MOST_BYTES
                + ". Hand over the case file instead.");
  }

  private static CaseCode refused(String reason) {
    return new CaseCode(Optional.empty(), Optional.of(reason));
  }

  /** Whether a section anywhere in a document is one of a coordinates file. */
  private static boolean namesFile(JsonNode node) {
    for (Map.Entry<String, JsonNode> property : node.properties()) {
      JsonNode value = property.getValue();
      if (property.getKey().equals("section")
          && (value.has("file") || value.isString() && SectionChoice.isFile(value.stringValue()))) {
        return true;
      }
      if (namesFile(value)) {
        return true;
      }
    }
    return node.isArray() && node.valueStream().anyMatch(CaseCode::namesFile);
  }

  /** The text, however long. */
  static String compact(ObjectNode document) {
    List<String> lines = new ArrayList<>();
    JsonNode schema = SchemaBook.CASE.root();
    for (String key : schema.get("properties").propertyNames()) {
      if (!(document.get(key) instanceof ObjectNode group) || LEFT_OUT.contains(key)) {
        continue;
      }
      JsonNode own = SchemaBook.CASE.find(key).orElseThrow();
      if (!key.equals("setup")) {
        lines.add(key + ": " + value(group, own));
        continue;
      }
      lines.add("setup:");
      for (String part : own.get("properties").propertyNames()) {
        JsonNode partSchema = SchemaBook.CASE.find(Paths.child(key, part)).orElseThrow();
        JsonNode value = group.get(part);
        if (value != null && !counts(value, partSchema)) {
          lines.add(" " + part + ": " + value(value, partSchema));
        }
      }
    }
    return String.join("\n", lines);
  }

  private static String value(JsonNode value, JsonNode schema) {
    if (value instanceof ObjectNode group) {
      List<String> entries = new ArrayList<>();
      for (Map.Entry<String, JsonNode> known : schema.get("properties").properties()) {
        JsonNode own = SchemaBook.CASE.resolve(known.getValue());
        JsonNode entry = group.get(known.getKey());
        if (entry != null && !counts(entry, own)) {
          entries.add(known.getKey() + ": " + value(entry, own));
        }
      }
      return "{" + String.join(",", entries) + "}";
    }
    if (value.isArray()) {
      JsonNode items = SchemaBook.CASE.resolve(schema.get("items"));
      return "["
          + String.join(",", value.valueStream().map(entry -> value(entry, items)).toList())
          + "]";
    }
    // Texts here are words of the schema and section codes: none needs quotes
    return value.isNumber() ? Words.number(value.doubleValue()) : code(value.stringValue(), schema);
  }

  private static String code(String text, JsonNode schema) {
    return schema.has("enum") ? text : SectionChoice.plain(text);
  }

  /** Whether a value is the one that counts anyway. */
  private static boolean counts(JsonNode value, JsonNode schema) {
    JsonNode fallback = schema.get("default");
    if (fallback == null) {
      return false;
    }
    if (value instanceof ObjectNode group) {
      return group.size() == fallback.size()
          && group.properties().stream()
              .allMatch(p -> same(p.getValue(), fallback.path(p.getKey())));
    }
    return same(value, fallback);
  }

  private static boolean same(JsonNode value, JsonNode fallback) {
    return value.isNumber() && fallback.isNumber()
        ? value.doubleValue() == fallback.doubleValue()
        : value.equals(fallback);
  }
}
