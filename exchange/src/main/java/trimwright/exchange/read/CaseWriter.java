package trimwright.exchange.read;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.read.internal.YamlParser;

/**
 * Writes a case back as a case file: {@code format} first, keys in the schema's order, every
 * default written out. Comments of the original are not kept; {@link CaseFile#text()} has them.
 */
public final class CaseWriter {
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z][A-Za-z0-9._/-]*");
  private static final Pattern RESERVED = Pattern.compile("(?i)true|false|null");

  private CaseWriter() {}

  /**
   * The case as YAML.
   *
   * @param file a case that was read
   * @return text that reads to the same case with the same digest
   * @throws IllegalArgumentException if the file's text is not one that the reader accepts
   */
  public static String yaml(CaseFile file) {
    ObjectNode document =
        YamlParser.parse(file.text())
            .root()
            .orElseThrow(
                () -> new IllegalArgumentException("the case's text is no longer a case file"));
    return yaml(SchemaBook.CASE.filled(document));
  }

  /** A document as YAML, with no more than what stands in it. */
  static String yaml(ObjectNode document) {
    StringBuilder out = new StringBuilder();
    group(document, SchemaBook.CASE.root(), "", out);
    return out.toString();
  }

  private static void group(ObjectNode group, JsonNode schema, String indent, StringBuilder out) {

    for (Map.Entry<String, JsonNode> known : schema.path("properties").properties()) {
      JsonNode value = group.get(known.getKey());
      if (value == null) {
        continue;
      }
      out.append(indent).append(known.getKey()).append(':');
      value(value, SchemaBook.CASE.resolve(known.getValue()), indent + "  ", out);
    }
  }

  private static void value(JsonNode value, JsonNode schema, String indent, StringBuilder out) {
    if (value instanceof ObjectNode group) {
      out.append('\n');
      group(group, schema, indent, out);
    } else if (value.isArray()) {
      out.append('\n');
      for (JsonNode element : value) {
        StringBuilder item = new StringBuilder();
        group(
            (ObjectNode) element,
            SchemaBook.CASE.resolve(schema.get("items")),
            indent + "  ",
            item);
        out.append(indent).append("- ").append(item.substring(indent.length() + 2));
      }
    } else {
      out.append(' ')
          .append(
              value.isNumber() ? Words.number(value.doubleValue()) : quoted(value.stringValue()))
          .append('\n');
    }
  }

  private static String quoted(String text) {
    if (PLAIN.matcher(text).matches() && !RESERVED.matcher(text).matches()) {
      return text;
    }
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
              } else if (c < 0x20 || c >= 0x7f && c < 0xa0 || isOdd(c)) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.append('"').toString();
  }

  /** Line separators, byte order marks and lone surrogates do not survive unescaped. */
  private static boolean isOdd(int c) {
    return c == 0x2028
        || c == 0x2029
        || c == 0xfeff
        || c >= 0xd800 && c < 0xe000
        || c == 0xfffe
        || c == 0xffff;
  }
}
