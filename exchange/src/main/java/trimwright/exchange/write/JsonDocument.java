package trimwright.exchange.write;

import java.util.Objects;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** One JSON document with the heading that all of them share. */
public final class JsonDocument {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private final ObjectNode root = MAPPER.createObjectNode();
  private final JsonFields fields = new JsonFields(root);

  private JsonDocument() {}

  /**
   * A document that holds its heading so far.
   *
   * @param format name and number, such as {@code trimwright-curve/1}
   * @param caseDigest digest of what the document was computed from
   * @return the document
   */
  public static JsonDocument start(String format, String caseDigest) {
    JsonDocument document = new JsonDocument();
    document
        .fields
        .text("format", Objects.requireNonNull(format))
        .text("model_version", ModelVersion.TEXT)
        .text("case_digest", Objects.requireNonNull(caseDigest));
    return document;
  }

  /** The document's own fields, to be added to. */
  public JsonFields fields() {
    return fields;
  }

  /** The document as text, indented, with a line end. */
  public String text() {
    return MAPPER.writeValueAsString(root).replace("\r\n", "\n") + "\n";
  }
}
